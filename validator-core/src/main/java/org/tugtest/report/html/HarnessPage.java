package org.tugtest.report.html;

import java.util.List;
import org.tugtest.report.Baseline;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.html.bundles.BundlesRoom;
import org.tugtest.report.html.circuits.CircuitsRoom;
import org.tugtest.report.html.fuses.FusesRoom;
import org.tugtest.report.html.fuses.IsolationCard;
import org.tugtest.report.html.loom.LoomRoom;
import org.tugtest.report.html.protection.ProtectionRoom;
import org.tugtest.report.html.text.Few;
import org.tugtest.report.html.volts.VoltsRoom;
import org.tugtest.report.html.volts.WhatIfRoom;

/**
 * The page of one root.
 *
 * @param json the file that leaves nothing out, or how it is written
 * @param data what the script reads, as JSON that is safe inside a page
 */
record HarnessPage(
    Frame frame,
    VerdictRoom verdict,
    FindingsRoom findings,
    Few<ExpectationView> expectations,
    CoverageRoom coverage,
    NotRunRoom notRun,
    LoomRoom loom,
    BundlesRoom bundles,
    CircuitsRoom circuits,
    FusesRoom fuses,
    ProtectionRoom protection,
    IsolationCard isolation,
    VoltsRoom volts,
    WhatIfRoom whatIf,
    FacesRoom faces,
    NetsRoom nets,
    TotalsRoom totals,
    List<RuleText> rules,
    String json,
    String data) {

  static HarnessPage of(Report report, HarnessReport harness, Frame frame) {
    SubjectLists lists = new SubjectLists();
    FindingsRoom findings = FindingsRoom.of(report, harness);
    CoverageRoom coverage = CoverageRoom.of(report, harness, lists);
    LoomRoom loom = loom(harness);
    CircuitsRoom circuits = CircuitsRoom.of(harness.facts());
    FacesRoom faces = FacesRoom.of(harness.facts(), findings.marks());
    return new HarnessPage(
        frame,
        VerdictRoom.of(report, harness, findings),
        findings,
        ExpectationView.of(report, harness),
        coverage,
        NotRunRoom.of(harness.result()),
        loom,
        BundlesRoom.of(harness.facts()),
        circuits,
        FusesRoom.of(harness.facts(), circuits.circuits()),
        ProtectionRoom.of(harness.facts()),
        IsolationCard.of(harness.facts()),
        VoltsRoom.of(harness.facts(), circuits.circuits()),
        WhatIfRoom.of(harness.facts(), circuits.circuits()),
        faces,
        NetsRoom.of(harness.facts()),
        TotalsRoom.of(harness, faces),
        RuleText.of(report, harness, findings.rules().keySet()),
        report.json("report.json"),
        PageData.json(harness.facts(), findings, faces, loom, circuits, lists));
  }

  private static LoomRoom loom(HarnessReport harness) {
    Baseline baseline = harness.baseline();
    return baseline == null || !baseline.present()
        ? LoomRoom.of(harness.facts())
        : LoomRoom.of(harness.facts(), baseline.label(), baseline.comparison());
  }
}
