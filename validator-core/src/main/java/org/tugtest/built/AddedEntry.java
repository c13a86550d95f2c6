package org.tugtest.built;

import java.util.List;
import java.util.Map;
import org.tugtest.built.Entries.Misfit;
import org.tugtest.facts.Deviation;
import org.tugtest.facts.Facts;
import org.tugtest.model.Ref;

/** Entries of something that the plan has not. */
final class AddedEntry {
  private final EntryReader reader;
  private final Facts plan;

  AddedEntry(EntryReader reader) {
    this.reader = reader;
    this.plan = reader.plan();
  }

  TakenEntry read() throws Misfit {
    String id = reader.owner();
    if (plan.harness().wires().containsKey(id)
        || plan.harness().connectors().containsKey(id)
        || plan.harness().splices().containsKey(id)
        || plan.harness().devices().containsKey(id)) {
      throw new Misfit(
          "adds " + id + ", which the plan has already", "give what was added an id of its own");
    }
    if (!(reader.entry().built() instanceof Map<?, ?> fields)) {
      throw new Misfit(
          "adds " + reader.subject() + " and does not say what",
          "write its fields under \"built\", for a wire {\"from\": \"..\", \"to\": \"..\"}");
    }
    String noun = reader.subject().section();
    noun = noun.substring(0, noun.length() - 1);
    String what = noun + " " + id + " was added";
    if (noun.equals("wire")) {
      what += " from " + end(fields, "from") + " to " + end(fields, "to");
    }
    return reader.taken(
        Deviation.Kind.CONNECTION,
        what,
        List.of(new Alteration(reader.subject().place(), List.of(), fields)));
  }

  private Ref end(Map<?, ?> fields, String field) throws Misfit {
    if (!(fields.get(field) instanceof String text)) {
      throw new Misfit(
          "adds wire " + reader.owner() + " without \"" + field + "\"",
          "write on which contact it ends");
    }
    Ref ref = Ref.parse(text);
    Names names = new Names(plan);
    if (names.point(ref).isEmpty()) {
      throw new Misfit(
          "adds wire " + reader.owner() + " on " + ref + ", which there is not",
          names.nearest(ref));
    }
    return ref;
  }
}
