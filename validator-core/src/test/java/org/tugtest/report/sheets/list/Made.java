package org.tugtest.report.sheets.list;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.tugtest.report.MemorySink;
import org.tugtest.report.Report;
import org.tugtest.report.html.SampleCar;
import org.tugtest.report.sheets.DocumentFolder;
import org.tugtest.report.sheets.DocumentMaker;

/** The documents of one maker, read back as a person or a spreadsheet would; for tests. */
final class Made {
  static final String POD = "loom-night-lamps/";
  private static final CSVFormat CSV =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
  private final MemorySink sink = new MemorySink();

  private Made(DocumentMaker maker, Report report) {
    try {
      new DocumentFolder(List.of(maker)).write(report, sink);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Of the sample. */
  static Made ofSample(DocumentMaker maker) {
    return new Made(maker, SampleCar.whole());
  }

  /** Of one root with this text. */
  static Made of(DocumentMaker maker, String json) {
    return new Made(maker, SampleCar.checked(Map.of("a.harness.json", json), "a.harness.json"));
  }

  boolean has(String path) {
    return sink.paths().contains(path);
  }

  /** The rows of a CSV file. */
  List<CSVRecord> rows(String path) {
    try {
      return CSV.parse(new StringReader(sink.text(path))).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The row whose first cell is this. */
  CSVRecord row(String path, String first) {
    return rows(path).stream()
        .filter(row -> row.get(0).equals(first))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no row " + first + " in " + path));
  }

  /** One column of a CSV file. */
  List<String> column(String path, String name) {
    return rows(path).stream().map(row -> row.get(name)).toList();
  }

  /** The content of a page, its tags left out. */
  String words(String path) {
    String page = sink.text(path);
    return page.substring(page.indexOf("<body>"))
        .replaceAll("<[^>]*>", " ")
        .replace('\u00A0', ' ')
        .replaceAll("\\s+", " ");
  }

  /** The content of a page. */
  String page(String path) {
    return sink.text(path);
  }
}
