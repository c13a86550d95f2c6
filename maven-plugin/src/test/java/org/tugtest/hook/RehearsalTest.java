package org.tugtest.hook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tugtest.git.Environment;
import org.tugtest.git.RealGit;

class RehearsalTest {
  @TempDir Path top;
  private final List<String> lines = new ArrayList<>();

  private GuardRun run() {
    Clock clock = Clock.fixed(Instant.parse("2026-11-28T12:00:00Z"), ZoneOffset.UTC);
    return new GuardRun(Guarded.order(), top, new Environment(Map.of()), clock, lines::add);
  }

  @Test
  void theCommitBeforeIsReadThoughNothingBlocks() throws IOException {
    RealGit git = Guarded.repository(top);
    List<String> own = git.ownFiles();
    run().rehearse();
    assertThat(lines)
        .contains("passes: car.harness.json")
        .anyMatch(l -> l.startsWith("against HEAD"));
    assertThat(git.ownFiles()).isEqualTo(own);
    lines.clear();
    run().check();
    assertThat(lines).contains("passes: car.harness.json").noneMatch(l -> l.startsWith("against"));
  }

  @Test
  void whereThereIsNothingYetTheExamplesAreEnough() throws IOException {
    assertThat(Rehearsal.run(run())).isPositive();
    RealGit.init(top);
    assertThat(Rehearsal.run(run())).isPositive();
  }
}
