package org.tugtest.bench.rework;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.network.Point;

/**
 * Writes down the steps of taking out, putting on and putting in; it keeps count of what is loose.
 */
final class Writer {
  private final Bench bench;
  private final Words words;
  private final List<Step> steps = new ArrayList<>();
  private final Set<Unit> released = new HashSet<>();
  private final Set<PieceEnd> bare = new HashSet<>();
  private final Set<Piece> added = new HashSet<>();
  private final Set<Piece> removed = new HashSet<>();
  private final Set<Piece> labelled = new HashSet<>();
  private final Set<Job> placed = new HashSet<>();

  Writer(Bench bench) {
    this.bench = bench;
    this.words = new Words(bench);
  }

  List<Step> steps() {
    return List.copyOf(steps);
  }

  boolean isReleased(Unit unit) {
    return released.contains(unit);
  }

  /** Takes a unit out of its seat, if it is still there. */
  void release(Unit unit) {
    if (!released.add(unit)) {
      return;
    }
    Seat seat = unit.seat();
    if (seat.kind() == Point.Kind.SPLICE) {
      add(Step.Kind.CUT, unit.ends(), seat, null, null, words.cutOut(unit), List.of());
      bare.addAll(unit.ends());
    } else {
      Step.Kind kind = seat.kind() == Point.Kind.CAVITY ? Step.Kind.RELEASE : Step.Kind.DETACH;
      add(kind, unit.ends(), seat, null, unit.terminal(), words.release(unit), List.of());
    }
    boolean whole = unit.ends().stream().map(bench.jobs()::of).distinct().count() == 1;
    if (unit.ends().size() > 1 && !(whole && keepsTerminal(unit))) {
      cutOff(unit);
    }
    unit.ends().forEach(end -> removeIfFree(end.piece()));
  }

  private boolean keepsTerminal(Unit unit) {
    Job job = bench.jobs().of(unit.ends().get(0));
    return job != null && !job.fresh();
  }

  /** Cuts the terminal off, if it is still on. */
  private void cutOff(Unit unit) {
    if (unit.seat().kind() != Point.Kind.SPLICE && bare.addAll(unit.ends())) {
      add(Step.Kind.CUT, unit.ends(), null, null, unit.terminal(), words.cutOff(unit), List.of());
    }
  }

  private void removeIfFree(Piece piece) {
    if (piece.target() == null && free(piece, true) && free(piece, false) && removed.add(piece)) {
      List<PieceEnd> ends = List.of(new PieceEnd(piece, true), new PieceEnd(piece, false));
      add(Step.Kind.REMOVE, ends, null, null, null, words.remove(piece), List.of());
    }
  }

  private boolean free(Piece piece, boolean first) {
    PieceEnd end = new PieceEnd(piece, first);
    Unit unit = bench.sitsNow().of(end);
    return unit == null
        || (released.contains(unit) && (unit.ends().size() == 1 || bare.contains(end)));
  }

  /** Lets a unit wait elsewhere; {@code spare} null: tied back. */
  void park(Job job, @Nullable Seat spare) {
    Unit unit = job.sources().get(0);
    release(unit);
    add(
        Step.Kind.PARK,
        unit.ends(),
        null,
        spare,
        unit.terminal(),
        words.park(unit, spare, job.to()),
        List.of());
  }

  /** Takes a unit out of the cavity in which it waited. */
  void unpark(Job job, Seat spare) {
    Unit unit = job.sources().get(0);
    add(
        Step.Kind.RELEASE,
        unit.ends(),
        spare,
        null,
        unit.terminal(),
        words.releaseParked(unit, spare),
        List.of());
  }

  /** Puts a unit into its seat; all that it is made of must be loose or free to be taken out. */
  void place(Job job) {
    if (!placed.add(job)) {
      return;
    }
    job.sources().forEach(this::release);
    job.wanted().ends().forEach(end -> lay(end.piece()));
    Unit wanted = job.wanted();
    List<String> reach =
        wanted.ends().stream()
            .flatMap(end -> bench.reach().remarks(end).stream())
            .distinct()
            .toList();
    if (job.fresh()) {
      job.sources().forEach(this::cutOff);
      slideOn(wanted);
      if (job.to().kind() != Point.Kind.SPLICE) {
        add(
            Step.Kind.CRIMP,
            wanted.ends(),
            null,
            null,
            wanted.terminal(),
            words.crimp(wanted),
            reach);
        reach = List.of();
      }
    }
    if (job.to().kind() != Point.Kind.SPLICE) {
      Step.Kind kind = job.to().kind() == Point.Kind.CAVITY ? Step.Kind.INSERT : Step.Kind.ATTACH;
      add(kind, wanted.ends(), null, job.to(), wanted.terminal(), words.insert(wanted), reach);
    }
  }

  private void lay(Piece piece) {
    if (piece.now() == null && added.add(piece)) {
      List<PieceEnd> ends = List.of(new PieceEnd(piece, true), new PieceEnd(piece, false));
      add(Step.Kind.ADD, ends, null, null, null, words.lay(piece), List.of());
    }
  }

  private void slideOn(Unit wanted) {
    List<String> things = words.slidOn(wanted);
    wanted.ends().stream()
        .map(PieceEnd::piece)
        .filter(piece -> !words.newLabel(piece).isEmpty())
        .forEach(labelled::add);
    if (!things.isEmpty()) {
      add(
          Step.Kind.SLIDE_ON,
          wanted.ends(),
          null,
          null,
          null,
          words.slideOn(wanted, things),
          List.of());
    }
  }

  /** Joins the splices; their ends must be free to be taken out. */
  void splices() {
    Map<Seat, List<PieceEnd>> splices = bench.jobs().splices();
    splices.forEach(
        (seat, ends) -> {
          Set<Job> jobs = new LinkedHashSet<>();
          ends.forEach(end -> Optional.ofNullable(bench.jobs().of(end)).ifPresent(jobs::add));
          jobs.forEach(this::place);
          List<String> reach =
              ends.stream().flatMap(end -> bench.reach().remarks(end).stream()).distinct().toList();
          List<String> coverings = words.coverings(seat);
          if (!coverings.isEmpty()) {
            add(
                Step.Kind.SLIDE_ON,
                ends.subList(0, 1),
                null,
                null,
                null,
                words.slideOver(seat, ends.get(0), coverings),
                List.of());
          }
          add(
              Step.Kind.SPLICE,
              ends,
              null,
              seat,
              words.splicePart(seat),
              words.splice(seat, ends),
              reach);
        });
  }

  /** New wires that end nowhere, and labels that go round what has its terminals on. */
  void finish() {
    for (Piece piece : bench.pieces()) {
      if (piece.target() != null) {
        lay(piece);
      }
      if (!labelled.contains(piece) && piece.kept() && !words.newLabel(piece).isEmpty()) {
        List<PieceEnd> ends = List.of(new PieceEnd(piece, true), new PieceEnd(piece, false));
        add(Step.Kind.LABEL, ends, null, null, null, words.label(piece), List.of());
      }
    }
  }

  private void add(
      Step.Kind kind,
      List<PieceEnd> ends,
      @Nullable Seat from,
      @Nullable Seat to,
      @Nullable String part,
      String text,
      List<String> remarks) {
    Seat seat = from != null ? from : to;
    String at = seat != null ? seat.owner() : ends.get(0).piece().name();
    steps.add(new Step(kind, at, ends, from, to, part, text, remarks));
  }
}
