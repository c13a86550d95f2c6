package org.tugtest.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class MemorySinkTest {
  private final MemorySink sink = new MemorySink();

  @Test
  void aFileIsThereOnceItIsClosed() throws IOException {
    try (OutputStream out = sink.open("a/b.txt")) {
      out.write("ü".getBytes(StandardCharsets.UTF_8));
      assertThat(sink.leftOpen()).containsExactly("a/b.txt");
      assertThat(sink.paths()).isEmpty();
    }
    assertThat(sink.text("a/b.txt")).isEqualTo("ü");
    assertThat(sink.leftOpen()).isEmpty();
    assertThat(sink.paths()).containsExactly("a/b.txt");
  }

  @Test
  void aFileIsWrittenOnlyOnce() throws IOException {
    sink.open("a").close();
    assertThatIOException().isThrownBy(() -> sink.open("a")).withMessage("a is written twice");
    OutputStream open = sink.open("b");
    assertThatIOException().isThrownBy(() -> sink.open("b")).withMessage("b is written twice");
    open.close();
  }

  @Test
  void aFileThatIsNotThereIsNamed() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> sink.text("x"))
        .withMessage("x was not written; there are []");
  }
}
