//! Pictures and downloads of the course lie beside the pages that show and offer them.

use super::fixture::{built, pages, tiny};
use super::html::tags;
use healedhue::course::{Asset, Block};

#[test]
fn pictures_are_shown_and_downloads_offered() {
    let mut tiny = tiny(str::to_owned);
    let asset = |path: &str, content: &str| Asset { path: path.to_owned(), content: content.into() };
    tiny.0.assets = vec![asset("one/hand out.pdf", "%PDF-"), asset("one/skin.png", "PNG")];
    let text = "![The skin](skin.png \"In layers\")\n\nTake [it](<hand out.pdf#page=2>) home.";
    tiny.0.modules[0].lessons[0].page.blocks.push(Block::Text(text.to_owned()));
    tiny.0.prefix[0].blocks.push(Block::Text("Look: ![The skin](one/skin.png) again.".to_owned()));
    let files = built(&tiny);
    assert_eq!(files["lessons/one/skin.png"], b"PNG");
    assert_eq!(files["lessons/one/hand out.pdf"], b"%PDF-");
    let pages = pages(&files);
    let lesson = &pages["lessons/one/first.html"];
    assert!(lesson.contains(
        "<figure class=\"picture\">\n<img src=\"skin.png\" alt=\"The skin\" /><figcaption>In layers</figcaption></figure>"
    ));
    let offered = |tag: &super::html::Tag| tag.get("href") == Some("hand%20out.pdf#page=2");
    assert!(tags(lesson).iter().any(offered));
    let welcome = tags(&pages["lessons/welcome.html"]);
    let picture = welcome.iter().find(|tag| tag.name == "img").unwrap();
    assert_eq!((picture.get("src"), picture.get("alt")), (Some("one/skin.png"), Some("The skin")));
}

/// Nothing on a page can style an image but the style sheet, which keeps it within its column.
#[test]
fn pictures_stay_within_their_column() {
    let style = String::from_utf8(built(&tiny(str::to_owned))["style.css"].clone()).unwrap();
    assert!(style.contains(".prose img { max-width: 100%;"));
}
