package org.tugtest.built;

import java.util.List;
import org.tugtest.facts.Deviation;
import org.tugtest.model.BuildRecord;

/**
 * An entry of a record that fits the plan.
 *
 * @param deviation what it says
 * @param alterations what would have to stand otherwise in the plan for it to be as planned
 */
public record TakenEntry(
    BuildRecord record,
    BuildRecord.Entry entry,
    Deviation deviation,
    List<Alteration> alterations) {
  public TakenEntry {
    alterations = List.copyOf(alterations);
  }
}
