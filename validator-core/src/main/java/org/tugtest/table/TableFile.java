package org.tugtest.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads the tables that ship beside this class. */
final class TableFile {
  private TableFile() {}

  static List<CSVRecord> rows(String name) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream in = TableFile.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the table " + name + " is not on the class path");
      }
      try (InputStreamReader text = new InputStreamReader(in, StandardCharsets.UTF_8)) {
        return format.parse(text).getRecords();
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
