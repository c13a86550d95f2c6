package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.bench.retest.Function;
import org.tugtest.compare.Announced;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.cause.Meeting;
import org.tugtest.compare.change.Change;
import org.tugtest.compare.change.Group;
import org.tugtest.compare.circuit.ElementChange;
import org.tugtest.compare.circuit.NetChange;
import org.tugtest.compare.consequence.Consequences;
import org.tugtest.compare.consequence.Moved;
import org.tugtest.finding.Finding;
import org.tugtest.report.Baseline;
import org.tugtest.report.BenchWork;
import org.tugtest.report.ChangeSummary;
import org.tugtest.report.Gate;
import org.tugtest.report.StepText;

/**
 * What there is to say of a change, as much of it as a page takes.
 *
 * @param circuits the verdict on circuits in words
 * @param changes policy first
 * @param faces connectors before and after
 * @param putsBack whether the rework makes the loom as built into the planned one
 * @param left what stays as it was built since it is accepted
 * @param besides what is done though no terminal moves
 * @param open what the steps cannot do
 * @param steps of the rework, one connector at a time
 * @param retest what is measured after it
 * @param functions what is switched on and looked at after it
 */
record Told(
    String summary,
    String circuits,
    FirstOf<Line> circuitChanges,
    FirstOf<Meeting> meetings,
    FirstOf<Change> changes,
    FirstOf<ChangedFaces> faces,
    List<Figures> moved,
    FirstOf<Finding> resolved,
    boolean putsBack,
    FirstOf<String> left,
    FirstOf<String> cautions,
    FirstOf<String> besides,
    FirstOf<String> open,
    FirstOf<StepText.Line> steps,
    FirstOf<RetestLine> retest,
    FirstOf<Function> functions) {

  /** A sentence, and whether it is announced; empty where nobody announces anything. */
  record Line(String text, String announced) {}

  /** Figures of one sort that moved. */
  record Figures(String title, FirstOf<Moved> moved) {}

  static Told of(Gate gate, Baseline baseline, PageShare share) {
    Comparison comparison = baseline.comparison();
    BenchWork work = baseline.work();
    int most = share.entries();
    return new Told(
        ChangeSummary.of(comparison),
        comparison.circuits().sentence(),
        FirstOf.of(lines(gate, comparison, baseline.announced()), most),
        FirstOf.of(baseline.meetings(), most),
        FirstOf.of(comparison.changes(), most),
        faces(comparison, share),
        Consequences.of(comparison).stream()
            .map(sort -> new Figures(sort.title(), FirstOf.of(sort.moved(), share.rows())))
            .toList(),
        FirstOf.of(comparison.findings().resolved(), most),
        work.putsBack(),
        FirstOf.of(work.left(), most),
        FirstOf.of(work.rework().cautions(), most),
        FirstOf.of(work.rework().besides(), most),
        FirstOf.of(work.rework().open(), most),
        FirstOf.of(StepText.lines(work.rework().steps()), most),
        FirstOf.of(RetestLine.of(work.retest()), most),
        FirstOf.of(work.retest().functions(), most));
  }

  private static List<Line> lines(Gate gate, Comparison comparison, Announced announced) {
    boolean asked = gate.announcedOnly() || announced.any();
    List<Line> lines = new ArrayList<>();
    for (NetChange net : comparison.circuits().nets()) {
      lines.add(line(net.sentence(), asked, announced.undeclaredNets().contains(net)));
    }
    for (ElementChange element : comparison.circuits().elements()) {
      lines.add(line(element.sentence(), asked, announced.undeclaredElements().contains(element)));
    }
    for (Announced.NotMade open : announced.notMade()) {
      lines.add(new Line("Announced and not made: " + open.id() + ", " + open.why() + ".", ""));
    }
    for (String id : announced.old()) {
      lines.add(new Line("Covered by " + id + ", which the base had announced already.", ""));
    }
    return lines;
  }

  private static Line line(String sentence, boolean asked, boolean undeclared) {
    String announced = undeclared ? "Not announced." : "Announced.";
    return new Line(sentence, asked ? announced : "");
  }

  private static FirstOf<ChangedFaces> faces(Comparison comparison, PageShare share) {
    List<ChangedFaces> all = ChangedFaces.of(comparison);
    int cavities = 0;
    int fit = 0;
    while (fit < all.size() && cavities + all.get(fit).cavities() <= share.cavities()) {
      cavities += all.get(fit).cavities();
      fit++;
    }
    return FirstOf.of(all, fit);
  }

  /** The heading of a group; an id stays as it is written. */
  static String title(Group group) {
    String title = group.title();
    return switch (group.sort()) {
      case CONNECTOR, DEVICE, SPLICE -> title;
      default -> Character.toUpperCase(title.charAt(0)) + title.substring(1);
    };
  }

  /** The changes that are shown, by what they are reported under. */
  Map<Group, List<Change>> groups() {
    Map<Group, List<Change>> groups = new LinkedHashMap<>();
    for (Change change : changes.shown()) {
      groups.computeIfAbsent(change.group(), none -> new ArrayList<>()).add(change);
    }
    return groups;
  }
}
