package org.tugtest.hook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The programs are JVMs that run one source file, so that every system has them. */
@Timeout(120)
class ProgramTest {
  @TempDir Path folder;

  private List<String> java(String body) throws IOException {
    Path source = folder.resolve("Child.java");
    Files.writeString(
        source,
        "class Child { public static void main(String[] a) throws Exception { " + body + " } }");
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    return List.of(java, source.toString());
  }

  @Test
  void givesTheCodeAndAllThatWasPrinted() throws IOException {
    // More than a pipe holds: it would block if nobody read while it runs.
    Program.Ended ended =
        Program.run(
            folder,
            java("System.out.print(\"ab\".repeat(100_000)); System.out.flush(); System.exit(3);"));
    assertThat(ended.code()).isEqualTo(3);
    assertThat(ended.printed()).isEqualTo("ab".repeat(100_000));
  }

  @Test
  void aProgramThatHoldsItsOutputOpenAndNeverEndsIsGivenUp() throws IOException {
    List<String> sleeps = java("System.out.print(1); System.out.flush(); Thread.sleep(3_600_000);");
    assertThatThrownBy(() -> Program.run(folder, sleeps, Duration.ofSeconds(2)))
        .isInstanceOf(IOException.class)
        .hasMessage(sleeps.get(0) + " does not end");
  }

  @Test
  void aProgramThatClosesItsOutputAndNeverEndsIsGivenUp() throws IOException {
    List<String> sleeps = java("System.out.close(); Thread.sleep(3_600_000);");
    assertThatThrownBy(() -> Program.run(folder, sleeps, Duration.ofSeconds(2)))
        .isInstanceOf(IOException.class)
        .hasMessage(sleeps.get(0) + " does not end");
  }

  @Test
  void aProgramThatThereIsNotCannotBeStarted() {
    assertThatThrownBy(() -> Program.run(folder, List.of("no-such-program-here")))
        .isInstanceOf(IOException.class);
  }
}
