package org.tugtest.report.sheets.ringout;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;
import org.tugtest.report.PrintableText;

/**
 * The empty file of readings, to be filled in without the page: the format of {@code
 * readings/*.csv}, so that ids stand in it as they are. Lines that stay without a reading have to
 * go before it is read.
 */
final class ReadingsForm {
  private ReadingsForm() {}

  static String of(List<Row> rows) {
    CSVFormat format = CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, format)) {
      printer.printRecord("from", "to", "ohms", "joined", "method", "by", "date", "note");
      for (Row row : rows) {
        if (row.from() != null && row.to() != null) {
          String method = row.kind() == Row.Kind.TIE ? "insulation" : "meter";
          printer.printRecord(
              row.from().text(), row.to().text(), "", "", method, "", "", note(row));
        }
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return out.toString();
  }

  private static String note(Row row) {
    String note =
        switch (row.kind()) {
          case JOINED ->
              "joined " + row.number() + ", at most " + ohms(row.limitOhms()) + ": " + row.says();
          case APART -> "apart " + row.number() + ": " + row.says();
          case TIE ->
              "tie "
                  + row.number()
                  + ": "
                  + row.says()
                  + ", "
                  + row.one().size()
                  + " against "
                  + row.other().size();
        };
    return PrintableText.of(note);
  }

  private static String ohms(@Nullable Double value) {
    return value == null
        ? "not known"
        : BigDecimal.valueOf(value)
                .setScale(4, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString()
            + " ohm";
  }
}
