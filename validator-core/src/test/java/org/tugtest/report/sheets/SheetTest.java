package org.tugtest.report.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tugtest.report.Cautions;
import org.tugtest.report.MemorySink;

class SheetTest {
  private static final Stamp STAMP =
      new Stamp("Lamp, revision B", "abc1234", "2026-11-25", "", List.of(), "1.2.3", Scope.WHOLE);
  private static final List<Column> COLUMNS =
      List.of(
          Column.text("wire", "Wire"),
          Column.number("cut_mm", "Cut", "mm"),
          Column.text("part_of", "Part of").inCsv(),
          Column.text("reading", "Reading").onPaper());

  private static Table table(Cell wire, Cell cut) {
    return Table.of(
        COLUMNS, List.of(List.of(wire, cut, Cell.text("nose"), Cell.EMPTY)), "No wires.");
  }

  private static MemorySink written(Stamp stamp, Block... blocks) throws IOException {
    Sheet.Builder builder = Sheet.titled(Scope.WHOLE, "cut-list", "Cut list").purpose("To cut.");
    List.of(blocks).forEach(builder::add);
    MemorySink sink = new MemorySink();
    builder.build().write(stamp, sink);
    return sink;
  }

  private static String csv(Block... blocks) throws IOException {
    return written(STAMP, blocks).text("cut-list.csv");
  }

  private static String page(Stamp stamp, Block... blocks) throws IOException {
    return written(stamp, blocks).text("cut-list.html");
  }

  @Test
  void writesFiguresPlainAndLeavesOutWhatIsForPaper() throws IOException {
    assertThat(csv(table(Cell.text("W1"), Cell.number(1234.5, 1))))
        .isEqualTo("wire,cut_mm,part_of\nW1,1234.5,nose\n");
  }

  @Test
  void quotesAsRfc4180Says() throws IOException {
    assertThat(csv(table(Cell.text("a \"b\", c"), Cell.count(5))))
        .isEqualTo("wire,cut_mm,part_of\n\"a \"\"b\"\", c\",5,nose\n");
  }

  @Test
  void keepsASpreadsheetFromRunningATextOrTakingItForADate() throws IOException {
    for (String text : List.of("=1+1", "@SUM(A1)", "+5", "-5", "007", "1-2", "\tx")) {
      assertThat(csv(table(Cell.text(text), Cell.EMPTY))).contains("'" + text);
    }
  }

  @Test
  void guardsWordsInAColumnOfFiguresToo() throws IOException {
    assertThat(csv(table(Cell.text("W1"), Cell.text("=2+3")))).contains("'=2+3");
    assertThat(csv(table(Cell.text("W1"), Cell.text("-12.5")))).contains("W1,-12.5,");
  }

  @Test
  void saysThatAFigureIsNotKnownInsteadOfZero() throws IOException {
    Cell cell = Cell.number(null, 0, "no layout");
    assertThat(csv(table(Cell.text("W1"), cell))).contains("W1,not known: no layout,");
    assertThat(page(STAMP, table(Cell.text("W1"), cell)))
        .contains("<td class=\"unknown\">not known<small class=\"below\">no layout</small></td>");
  }

  @Test
  void putsTablesOfTheSameNameIntoOneFile() throws IOException {
    Table one = table(Cell.text("W1"), Cell.count(1));
    Table two = table(Cell.text("W2"), Cell.count(2));
    Table other = table(Cell.text("W3"), Cell.count(3)).inCsv("more");
    MemorySink sink = written(STAMP, one, two, other, one.inCsv(Table.NO_CSV));
    assertThat(sink.paths())
        .containsExactlyInAnyOrder("cut-list.html", "cut-list.csv", "cut-list-more.csv");
    assertThat(sink.text("cut-list.csv")).isEqualTo("wire,cut_mm,part_of\nW1,1,nose\nW2,2,nose\n");
  }

  @Test
  void refusesOtherColumnsInOneFile() {
    Table other = Table.of(List.of(Column.text("x", "X")), List.of(List.of(Cell.EMPTY)), "");
    assertThatThrownBy(() -> csv(table(Cell.EMPTY, Cell.EMPTY), other))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Table.of(COLUMNS, List.of(List.of(Cell.EMPTY)), ""))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void escapesWhatFilesSay() throws IOException {
    String page = page(STAMP, table(Cell.text("<script>alert('x')</script>&\u202E"), Cell.EMPTY));
    assertThat(page)
        .contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;&amp;\\u202e")
        .doesNotContain("<script");
  }

  @Test
  void printsGuessAndColourInWordsBesideTheirPictures() throws IOException {
    Table table =
        Table.of(
            List.of(Column.text("a", "A"), Column.text("b", "B")),
            List.of(List.of(Cell.text("W1").guessed(true), Cell.colour("RD/WH"))),
            "");
    assertThat(page(STAMP, table))
        .contains("</svg>guess</span>")
        .contains("<span class=\"sw b-RD s-WH\" aria-hidden=\"true\"></span>")
        .contains("<span class=\"letters\">RD/WH</span>");
  }

  @Test
  void ticksOnPaperAndSaysWhatAnEmptyTableLacks() throws IOException {
    assertThat(page(STAMP, table(Cell.text("W1"), Cell.EMPTY).withTicks()))
        .contains("<td class=\"tick\"><span></span></td>");
    assertThat(page(STAMP, Table.of(COLUMNS, List.of(), "No wires.").withTicks()))
        .contains("<p class=\"none\">No wires.</p>")
        .doesNotContain("class=\"tick\"");
  }

  @Test
  void showsOnEachPageWhatItIsOfAndTheCautions() throws IOException {
    Scope loom = new Scope("loom-nose/", Scope.Kind.LOOM, "nose", "loom nose, revision C");
    MemorySink sink = new MemorySink();
    Sheet.titled(loom, "cut-list", "Cut list").build().write(STAMP, sink);
    String page = sink.text("loom-nose/cut-list.html");
    assertThat(page)
        .contains("@page{@top-left{content:\"Lamp\\00002c  revision B \\0000b7  loom nose")
        .contains("Cut list\"}@top-right{content:\"abc1234 \\0000b7  2026\\00002d 11\\00002d 25\"")
        .contains("counter(page) \" of \" counter(pages)")
        .contains("href=\"../index.html\"")
        .contains("<dd>loom nose, revision C</dd>");
    assertThat(page.replace("\\00002e ", ".")).contains("Checks the description of a loom");
    Cautions.SENTENCES.forEach(
        sentence -> assertThat(page).contains(sentence.replace("'", "&#39;")));
  }

  @Test
  void saysOnEachPageThatItIsNotComplete() throws IOException {
    Stamp stamp =
        new Stamp("Lamp", "x", "y", "", List.of("3 references lead nowhere"), "1.2.3", Scope.WHOLE);
    assertThat(page(stamp))
        .contains("<b>Not complete</b><p>3 references lead nowhere</p>")
        .contains("content:\"NOT COMPLETE \\0000b7  Lamp");
    assertThat(page(STAMP)).doesNotContain("NOT COMPLETE").doesNotContain("class=\"incomplete\"");
  }

  @Test
  void loadsNothing() throws IOException {
    assertThat(page(STAMP, table(Cell.text("W1"), Cell.EMPTY)))
        .contains("default-src &#39;none&#39;")
        .contains("script-src &#39;none&#39;")
        .doesNotContain("http://")
        .doesNotContain("https://")
        .doesNotContain("@import")
        .doesNotContain("url(");
  }
}
