package org.tugtest.built;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tugtest.built.Entries.Misfit;
import org.tugtest.facts.Deviation;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.model.BuildRecord;
import org.tugtest.model.Harness;
import org.tugtest.text.Place;
import org.tugtest.text.Quoted;

/** Reads one entry of a record: of which thing it speaks, and what was built otherwise. */
final class EntryReader {
  private static final List<String> SECTIONS =
      List.of("wires", "connectors", "splices", "devices", "segments");
  private final Facts plan;
  private final BuildRecord record;
  private final BuildRecord.Entry entry;
  private final Place at;
  private final Subject subject;

  EntryReader(Facts plan, BuildRecord record, BuildRecord.Entry entry, Place at) {
    this.plan = plan;
    this.record = record;
    this.entry = entry;
    this.at = at;
    this.subject = new Subject(Objects.requireNonNull(entry.at()));
  }

  Facts plan() {
    return plan;
  }

  BuildRecord record() {
    return record;
  }

  BuildRecord.Entry entry() {
    return entry;
  }

  Subject subject() {
    return subject;
  }

  BuildRecord.Kind kind() {
    return Objects.requireNonNull(entry.kind());
  }

  TakenEntry read() throws Misfit {
    String section = subject.section();
    if (!SECTIONS.contains(section)) {
      throw new Misfit(
          "speaks of " + subject + ", which is no place of a loom",
          "write " + String.join("/ID, ", SECTIONS) + "/ID");
    }
    if (kind() == BuildRecord.Kind.ADDED) {
      return new AddedEntry(this).read();
    }
    String id = owner();
    if (!known(section).contains(id)) {
      throw new Misfit(
          "speaks of " + subject + ", but the plan has no " + section + " " + Quoted.text(id),
          Names.nearest(id, known(section), section));
    }
    String loom = loomOf(section, id);
    if (loom != null && !loom.equals(record.loom())) {
      throw new Misfit(
          "speaks of " + subject + ", which belongs to loom " + loom + ", not " + record.loom(),
          "move the entry to the record of loom " + loom);
    }
    return section.equals("wires") ? new WireEntry(this).read() : new OtherEntry(this).read();
  }

  /** The id of the thing, without pin or element. */
  String owner() {
    String id = subject.id();
    int end = id.length();
    for (char mark : new char[] {':', '.'}) {
      int found = id.indexOf(mark);
      end = found < 0 ? end : Math.min(end, found);
    }
    return id.substring(0, end);
  }

  /** What follows the id of the thing: pin, element or field; empty when nothing does. */
  String member() {
    String id = subject.id();
    return owner().length() == id.length() ? "" : id.substring(owner().length() + 1);
  }

  private Collection<String> known(String section) {
    Harness harness = plan.harness();
    return switch (section) {
      case "wires" -> harness.wires().keySet();
      case "connectors" -> plan.wiring().connectors();
      case "splices" -> plan.wiring().splices();
      case "segments" -> harness.layout().segments().keySet();
      default -> harness.devices().keySet();
    };
  }

  private @Nullable String loomOf(String section, String id) {
    Harness harness = plan.harness();
    return switch (section) {
      case "wires" -> Objects.requireNonNull(harness.wires().get(id)).loom();
      case "connectors" ->
          harness.connectors().containsKey(id) ? harness.connectors().get(id).loom() : null;
      case "splices" -> harness.splices().containsKey(id) ? harness.splices().get(id).loom() : null;
      case "segments" -> harness.layout().segments().get(id).loom();
      default -> null;
    };
  }

  /** A text, number or truth value as people write it; empty for none. */
  static String words(@Nullable Object value) {
    if (value instanceof Number number) {
      return Quoted.number(number.doubleValue());
    }
    return value == null ? "" : Quoted.name(value.toString());
  }

  /** The text of a value that has to be one. */
  String builtText() throws Misfit {
    Object built = entry.built();
    if (built == null || built instanceof Map) {
      throw new Misfit("does not say as what it was built", "write the value under \"built\"");
    }
    return words(built);
  }

  /** What {@code planned} says has to be what the plan says. */
  void agree(String ofPlan) throws Misfit {
    Object planned = entry.planned();
    if (planned != null && !words(planned).equals(ofPlan)) {
      throw new Misfit(
          "says that "
              + Quoted.text(words(planned))
              + " was planned at "
              + subject
              + "; revision "
              + record.revision()
              + " of the plan says "
              + (ofPlan.isEmpty() ? "nothing" : Quoted.text(ofPlan)),
          "the record was made against another plan: correct the entry, or the record's revision");
    }
  }

  /** What was built has to differ from the plan. */
  void differ(String ofPlan, String built) throws Misfit {
    if (ofPlan.equals(built)) {
      throw new Misfit(
          "says that " + subject + " was built as " + Quoted.text(built) + ", which is the plan",
          "take the entry out, or correct it");
    }
  }

  TakenEntry taken(Deviation.Kind kind, String what, List<Alteration> alterations) {
    return taken(kind, what, null, null, alterations);
  }

  TakenEntry taken(
      Deviation.Kind kind,
      String what,
      @Nullable Double planned,
      @Nullable Double built,
      List<Alteration> alterations) {
    String told = "entry " + entry.id() + " of " + record.file();
    Deviation deviation =
        new Deviation(
            kind,
            subjectOfDeviation(),
            what,
            planned,
            built,
            entry.reason() == null ? "" : entry.reason(),
            entry.accepted(),
            entry.until(),
            entry.safe(),
            told,
            at);
    return new TakenEntry(record, entry, deviation, alterations);
  }

  /** A wire has no pins: an end of it is the wire. */
  private Subject subjectOfDeviation() {
    return subject.section().equals("wires") ? Subject.wire(owner()) : subject;
  }
}
