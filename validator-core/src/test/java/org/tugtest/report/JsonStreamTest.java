package org.tugtest.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

class JsonStreamTest {
  @Test
  void layout() {
    assertThat(
            written(
                json ->
                    json.object()
                        .text("a", "x")
                        .object("o")
                        .end()
                        .array("e")
                        .end()
                        .array("l")
                        .object()
                        .flag("f", true)
                        .end()
                        .text("t")
                        .end()
                        .texts("s", List.of("1", "2"))
                        .end()))
        .isEqualTo(
            """
            {
              "a": "x",
              "o": {},
              "e": [],
              "l": [
                {
                  "f": true
                },
                "t"
              ],
              "s": [
                "1",
                "2"
              ]
            }
            """);
  }

  @Test
  void numbersAreShortAndTheSameEverywhere() {
    assertThat(
            written(
                json ->
                    json.object()
                        .number("whole", 12.0)
                        .number("minus", -0.25)
                        .number("zero", -0.0)
                        .number("small", 2.0e-3)
                        .number("large", 2.0e16)
                        .number("shortest", 2.0e-23)
                        .number("nan", Double.NaN)
                        .number("endless", Double.NEGATIVE_INFINITY)
                        .number("none", null)
                        .count("count", 3)
                        .flag("unknown", null)
                        .end()))
        .isEqualTo(
            """
            {
              "whole": 12,
              "minus": -0.25,
              "zero": 0,
              "small": 0.002,
              "large": 2.0E16,
              "shortest": 2.0E-23,
              "nan": null,
              "endless": null,
              "none": null,
              "count": 3,
              "unknown": null
            }
            """);
  }

  @Test
  void anyTextIsCarried() {
    String hostile = "a\u0000\u001b\"\\\n\u2028\ud83dü🔋</script>\udd0b";
    String json = written(out -> out.object().text(hostile, hostile).end());
    assertThat(Schemas.tree(json).properties())
        .allSatisfy(
            property -> {
              String mended = "a\u0000\u001b\"\\\n\u2028\ufffdü🔋</script>\ufffd";
              assertThat(property.getKey()).isEqualTo(mended);
              assertThat(property.getValue().stringValue()).isEqualTo(mended);
            });
  }

  @Test
  void aStreamThatFailsIsSaidAndClosed() {
    boolean[] closed = {false};
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException("disk full");
          }

          @Override
          public void close() {
            closed[0] = true;
          }
        };
    assertThatIOException()
        .isThrownBy(() -> JsonStream.write(full, json -> json.array().text("x").end()))
        .withMessage("disk full");
    assertThat(closed[0]).isTrue();
  }

  private static String written(Consumer<JsonStream> content) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      JsonStream.write(out, content);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
    return out.toString(StandardCharsets.UTF_8);
  }
}
