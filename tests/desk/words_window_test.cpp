// SPDX-License-Identifier: MIT
#include "desk/words_window.h"

#include <QTextBlock>
#include <QTextBrowser>

#include "desk/desk_fixture.h"
#include "desk/reasons_view.h"

namespace creaseline::desk {

TEST_CASE("A word of the trade is searched and explained", "[desk][words]") {
  DeskOnDemo desk;
  desk.action("showWords").trigger();
  auto& window = desk.find<WordsWindow>("wordsWindow");
  activate(window);
  auto& list = desk.find<QListWidget>("wordsList");
  const int all = list.count();
  QTest::keyClicks(&desk.find<QLineEdit>("wordsSearch"), QStringLiteral("stabilizer"));
  int left = 0;
  for (int row = 0; row < all; ++row) {
    left += list.item(row)->isHidden() ? 0 : 1;
  }
  CHECK(left == 1);
  CHECK(list.currentItem()->text() == QStringLiteral("backing"));
  CHECK(desk.label("wordsMeaning").contains(QStringLiteral("under the cloth")));
  QTest::keyClicks(&desk.find<QLineEdit>("wordsSearch"), QStringLiteral("zzz"));
  CHECK(desk.label("wordsMeaning") == QStringLiteral("No such word here."));
  QTest::keyClick(&window, Qt::Key_Escape);
  CHECK_FALSE(window.isVisible());
}

TEST_CASE("Reasons explain their words in place, each once", "[desk][words]") {
  DeskOnDemo desk;
  desk.openDemo();
  auto& reasons = desk.find<ReasonsView>("reasons");
  QStringList links;
  const QTextDocument& document = *reasons.document();
  for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
    for (auto part = block.begin(); !part.atEnd(); ++part) {
      const QTextCharFormat format = part.fragment().charFormat();
      if (format.isAnchor()) {
        links.append(format.anchorHref());
      }
    }
  }
  REQUIRE(links.size() > 3);
  QStringList distinct = links;
  distinct.removeDuplicates();
  CHECK(distinct == links);
  // A click leads to the word.
  Q_EMIT reasons.anchorClicked(QUrl(links[1]));
  auto& window = desk.find<WordsWindow>("wordsWindow");
  activate(window);
  CHECK(QStringLiteral("word:%1").arg(desk.find<QListWidget>("wordsList").currentRow()) ==
        links[1]);
}

}  // namespace creaseline::desk
