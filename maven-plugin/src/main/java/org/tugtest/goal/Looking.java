package org.tugtest.goal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.logging.Log;
import org.jspecify.annotations.Nullable;
import org.tugtest.base.Ground;
import org.tugtest.base.Seen;
import org.tugtest.check.RuleCatalog;
import org.tugtest.files.Folders;
import org.tugtest.report.Gate;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.Revision;

/** Finds the files that a goal looks at: on disk, in the index or at a revision. */
record Looking(Surroundings around, Workplace place, Ground ground, Log log) {

  Seen at(BaseOrder order, @Nullable LocalDate today) throws MojoExecutionException {
    Clock clock = Clock.system(ZoneId.systemDefault());
    if (order.staged() && order.head() != null) {
      throw new MojoExecutionException(
          "tugtest.staged and tugtest.head name two things to look at; leave one of them out");
    }
    try {
      if (order.staged()) {
        return Seen.staged(ground.needed("tugtest.staged"), place.scope(), today, clock);
      }
      return order.head() == null
          ? Seen.onDisk(ground, place.scope(), place.files(), today, clock)
          : Seen.at(ground.needed("tugtest.head"), place.scope(), order.head(), today);
    } catch (IOException unread) {
      throw new MojoExecutionException(String.valueOf(unread.getMessage()), unread);
    }
  }

  /** Why there is nothing to look at, in one sentence. */
  String nothing(BaseOrder order) {
    if (order.staged()) {
      return place.nothingIn(around, "git's index; add it with git add");
    }
    return order.head() == null
        ? place.nothingFound(around)
        : place.nothingIn(around, order.head());
  }

  void remark(Seen seen) {
    for (String pattern : place.choice().idle(seen.files().all())) {
      log.warn("the pattern " + pattern + " fits no file");
    }
    seen.remarks().forEach(log::warn);
  }

  Report report(Revision revision, Gate gate, RuleCatalog catalog, List<HarnessReport> roots) {
    Path from = ground.shownFrom(place.folders(), around.base());
    return new Report(
        around.version(),
        Folders.slashed(from.relativize(place.folders().harness())),
        revision,
        gate,
        catalog.infos(),
        roots);
  }
}
