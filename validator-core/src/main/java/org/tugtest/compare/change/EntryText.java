package org.tugtest.compare.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.FusePart;
import org.tugtest.model.Ref;
import org.tugtest.model.RuleLimits;
import org.tugtest.model.Waiver;
import org.tugtest.model.Wire;
import org.tugtest.text.Quoted;

/** Whole entries in words, for those that came or went. */
final class EntryText {
  private EntryText() {}

  /** What an entry says, on one line; null for one that is only implied. */
  static @Nullable String of(@Nullable Object entry) {
    if (entry instanceof Wire wire) {
      return ends(wire);
    }
    return ValueText.of(entry);
  }

  /** {@code Wire W1 from A:1 to B:2 (1 mm2, RD) is gone.} */
  static String sentence(
      String section, String id, @Nullable Object entry, Facts facts, String what) {
    String name = new ChangeList.Entry(section, null, id).name();
    if (entry instanceof Wire wire) {
      List<String> traits = new ArrayList<>();
      String gauge = Gauge.of(wire, facts);
      if (!gauge.isEmpty()) {
        traits.add(gauge);
      }
      if (wire.colour() != null) {
        traits.add(wire.colour());
      }
      String in = traits.isEmpty() ? "" : " (" + String.join(", ", traits) + ")";
      return "Wire " + name + " " + ends(wire) + in + " " + what + ".";
    }
    if (entry instanceof Connector connector) {
      Ref mates = connector.mates();
      String on = mates == null ? "" : ", on " + mates.text() + ",";
      String housing = connector.housing() == null ? "" : " (" + connector.housing() + ")";
      return "Connector " + name + housing + on + " " + what + ".";
    }
    if (section.equals("fitted") && entry instanceof String part) {
      FusePart fuse = facts.harness().parts().fuses().get(part);
      String rating =
          fuse == null || fuse.ratingA() == null
              ? ""
              : " of " + Quoted.number(fuse.ratingA()) + " A";
      return what.equals("is new")
          ? "Fuse way " + name + " gets fuse " + part + rating + "."
          : "Fuse way " + name + " loses fuse " + part + rating + ".";
    }
    String policy = policy(entry);
    if (!policy.isEmpty()) {
      return name + " " + what + (what.equals("is new") ? ": " : "; it was: ") + policy + ".";
    }
    String noun =
        switch (section) {
          case "devices" -> "Device ";
          case "splices" -> "Splice ";
          case "groups" -> "Group ";
          default -> "";
        };
    String sentence = noun + name + " " + what + ".";
    return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
  }

  /** What is demanded otherwise, or let pass; empty for any other entry. */
  private static String policy(@Nullable Object entry) {
    if (entry instanceof RuleLimits limits) {
      List<String> said = new ArrayList<>();
      said.addAll(set(limits.level(), limits.settings(), ""));
      limits
          .places()
          .forEach((at, here) -> said.addAll(set(here.level(), here.settings(), " at " + at)));
      return String.join(", ", said);
    }
    if (entry instanceof Waiver waiver) {
      return "findings of "
          + named(waiver.rule())
          + " at "
          + named(waiver.at())
          + (waiver.state() == null ? "" : " in state " + waiver.state())
          + " pass"
          + (waiver.until() == null ? "" : " until " + waiver.until())
          + (waiver.reason() == null ? "" : ", because \"" + Quoted.name(waiver.reason()) + "\"");
    }
    return "";
  }

  private static List<String> set(
      @Nullable String level, Map<String, Object> settings, String where) {
    List<String> said = new ArrayList<>();
    if (level != null) {
      said.add((level.equals("off") ? "switched off" : "level " + level) + where);
    }
    settings.forEach((name, value) -> said.add(name + " " + ValueText.of(value) + where));
    return said;
  }

  private static String named(@Nullable String id) {
    return id == null ? "nothing" : Quoted.name(id);
  }

  /** The subject of an element of a device or type. */
  static Subject element(Subject owner, String element) {
    return new Subject(owner.place() + "." + element);
  }

  private static String ends(Wire wire) {
    return "from " + end(wire.from()) + " to " + end(wire.to());
  }

  static String end(@Nullable Ref ref) {
    return ref == null ? "nothing" : ref.text();
  }
}
