package org.tugtest.report.sheets;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tugtest.report.Sink;

/**
 * A sheet: a page for paper and screen, and a CSV file for each of its tables. Made with {@link
 * #titled}.
 *
 * @param name of its files, without ending: {@code wire-list}
 * @param notes what a reader has to know, one sentence each
 * @param blocks its content from top to bottom
 * @param landscape whether it is printed across
 * @param signed whether it ends with room for who did it and who looked
 * @param style what its own drawings need beside the common style
 * @param script what the page runs; empty: nothing
 */
public record Sheet(
    Scope scope,
    String heading,
    String name,
    String title,
    String purpose,
    List<String> notes,
    List<Block> blocks,
    boolean landscape,
    boolean signed,
    String style,
    String script)
    implements Document {
  /** Where the index lists what is for the bench. */
  public static final String BENCH = "Bench";

  /** Where the index lists what is for the track. */
  public static final String TRACK = "Track";

  public Sheet {
    notes = List.copyOf(notes);
    blocks = List.copyOf(blocks);
  }

  /** Begins a sheet for the bench. */
  public static Builder titled(Scope scope, String name, String title) {
    return new Builder(scope, name, title);
  }

  /** The path of its page, from the folder of the root. */
  public String page() {
    return scope.folder() + name + ".html";
  }

  @Override
  public List<String> files() {
    List<String> files = new ArrayList<>();
    files.add(page());
    SheetCsv.tables(this).keySet().forEach(csv -> files.add(scope.folder() + csv));
    return files;
  }

  @Override
  public void write(Stamp stamp, Sink sink) throws IOException {
    put(sink, page(), SheetPage.of(stamp.about(scope), this));
    writeTables(sink);
  }

  /**
   * Writes its files for a folder without an index: the page leads nowhere else.
   *
   * @throws IOException when the sink cannot take them
   */
  public void writeAlone(Stamp stamp, Sink sink) throws IOException {
    put(sink, page(), SheetPage.of(stamp.about(scope), this, ""));
    writeTables(sink);
  }

  private void writeTables(Sink sink) throws IOException {
    for (Map.Entry<String, List<Table>> csv : SheetCsv.tables(this).entrySet()) {
      put(sink, scope.folder() + csv.getKey(), SheetCsv.text(csv.getValue()));
    }
  }

  static void put(Sink sink, String path, String text) throws IOException {
    try (OutputStream out = sink.open(path)) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
  }

  /** Puts a sheet together. */
  public static final class Builder {
    private final Scope scope;
    private final String name;
    private final String title;
    private final List<String> notes = new ArrayList<>();
    private final List<Block> blocks = new ArrayList<>();
    private String heading = BENCH;
    private String purpose = "";
    private boolean landscape;
    private boolean signed;
    private String style = "";
    private String script = "";

    private Builder(Scope scope, String name, String title) {
      this.scope = scope;
      this.name = name;
      this.title = title;
    }

    /** Lists it under another heading of the index. */
    public Builder under(String word) {
      heading = word;
      return this;
    }

    /** Says what it is for, in one sentence. */
    public Builder purpose(String sentence) {
      purpose = sentence;
      return this;
    }

    /** Adds a sentence above the tables; an empty one is left out. */
    public Builder note(String sentence) {
      if (!sentence.isEmpty()) {
        notes.add(sentence);
      }
      return this;
    }

    /** Adds a table, a drawing or words. */
    public Builder add(Block block) {
      blocks.add(block);
      return this;
    }

    /** Prints it across. */
    public Builder landscape() {
      landscape = true;
      return this;
    }

    /** Leaves room for who did it and who looked. */
    public Builder signed() {
      signed = true;
      return this;
    }

    /** Adds style for its own drawings. */
    public Builder style(String css) {
      style = css;
      return this;
    }

    /** Lets the page run a script; it may load nothing. */
    public Builder script(String javaScript) {
      script = javaScript;
      return this;
    }

    /** The sheet. */
    public Sheet build() {
      return new Sheet(
          scope, heading, name, title, purpose, notes, blocks, landscape, signed, style, script);
    }
  }
}
