package org.tugtest.hook;

import java.io.BufferedWriter;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Consumer;
import org.tugtest.fleet.ShortOfMemory;
import org.tugtest.git.Environment;
import org.tugtest.report.Report;

/**
 * The program that the hook starts, at the top of the work tree. It ends with 0 when the commit may
 * go on, 1 when a finding blocks it, 2 when it could not check.
 */
public final class Guard {
  /** The first argument with which nothing is told but all classes are used once. */
  static final String REHEARSE = "--rehearse";

  private static final int CANNOT_CHECK = 2;

  private Guard() {}

  /** Checks what is about to be committed. */
  public static void main(String[] arguments) {
    Ahead.begin();
    PrintWriter out =
        new PrintWriter(
            new BufferedWriter(
                new OutputStreamWriter(
                    new FileOutputStream(FileDescriptor.out), StandardCharsets.UTF_8)));
    int code = run(List.of(arguments), out);
    out.flush();
    System.exit(code);
  }

  private static int run(List<String> arguments, PrintWriter out) {
    try {
      if (!arguments.isEmpty() && arguments.get(0).equals(REHEARSE)) {
        List<String> asked = arguments.subList(1, arguments.size());
        GuardRun silent = run(GuardOrder.of(asked), line -> {});
        line(out, Rehearsal.run(silent) + " lines rehearsed");
        return 0;
      }
      Report.Outcome outcome = run(GuardOrder.of(arguments), line -> line(out, line)).check();
      return switch (outcome) {
        case CLEAN -> 0;
        case FINDINGS -> 1;
        case CANNOT_CHECK -> CANNOT_CHECK;
      };
    } catch (IOException | IllegalArgumentException cannot) {
      line(out, "cannot check: " + cannot.getMessage());
      return CANNOT_CHECK;
    } catch (RuntimeException | Error broken) {
      String full =
          broken instanceof OutOfMemoryError error
              ? ShortOfMemory.told(error, "JAVA_TOOL_OPTIONS").orElse(null)
              : null;
      if (full != null) {
        line(out, "cannot check: " + full);
        return CANNOT_CHECK;
      }
      line(out, "cannot check: " + broken + "; this is a fault of Tugtest, not of the harness");
      for (StackTraceElement at : broken.getStackTrace()) {
        line(out, "    at " + at);
      }
      return CANNOT_CHECK;
    }
  }

  private static GuardRun run(GuardOrder order, Consumer<String> lines) {
    return new GuardRun(
        order,
        Path.of("").toAbsolutePath(),
        new Environment(System.getenv()),
        Clock.system(ZoneId.systemDefault()),
        lines);
  }

  private static void line(PrintWriter out, String line) {
    out.print(line);
    out.print('\n');
  }
}
