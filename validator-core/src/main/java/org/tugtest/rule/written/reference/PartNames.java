package org.tugtest.rule.written.reference;

import org.tugtest.finding.Subject;
import org.tugtest.model.Housing;

/** What housings and layout name. */
final class PartNames {
  private final Mentions mentions;
  private final Tables tables;

  PartNames(Mentions mentions, Tables tables) {
    this.mentions = mentions;
    this.tables = tables;
  }

  void all() {
    mentions.facts().harness().parts().housings().values().forEach(this::housing);
    mentions.facts().harness().layout().nodes().values().forEach(this::node);
    mentions.facts().harness().layout().segments().values().forEach(this::segment);
  }

  private void housing(Housing housing) {
    Holder by = Holder.of(Subject.part("housings", housing.id()));
    mentions.ids(by, tables.housings, housing.matesWith(), "matesWith");
    mentions.ids(by, tables.terminals, housing.terminals(), "terminals");
    mentions.ids(by, tables.seals, housing.seals(), "seals");
    Table own = tables.cavities(housing.id());
    if (own != null) {
      for (String cavity : housing.cavityFamilies().keySet()) {
        mentions.id(by, own, cavity, "cavities", cavity);
      }
    }
  }

  private void node(org.tugtest.model.Layout.Node node) {
    Holder by = Holder.of(Subject.of("nodes", node.id()));
    mentions.id(by, tables.zones, node.zone(), "zone");
    mentions.ids(by, tables.coverings, node.coverings(), "coverings");
  }

  private void segment(org.tugtest.model.Layout.Segment segment) {
    Holder by = Holder.of(Subject.of("segments", segment.id()));
    mentions.id(by, tables.nodes, segment.from(), "from");
    mentions.id(by, tables.nodes, segment.to(), "to");
    mentions.id(by, tables.zones, segment.zone(), "zone");
    mentions.ids(by, tables.coverings, segment.coverings(), "coverings");
    mentions.id(by, tables.supports, segment.supportPart(), "supportPart");
  }
}
