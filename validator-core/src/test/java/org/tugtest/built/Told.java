package org.tugtest.built;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.model.BuildRecord;
import org.tugtest.model.Reading;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadFile;
import org.tugtest.read.ReadLimits;
import org.tugtest.read.ReadingsReader;
import org.tugtest.read.RecordReader;

/** The records and readings among some files; for tests. */
public record Told(
    List<ReadFile<BuildRecord>> records, List<ReadFile<Map<Integer, Reading>>> readings) {

  /** Those among these files; empty when there are none. */
  public static Optional<Told> of(Map<String, String> files) {
    RecordReader records = new RecordReader(MemoryFiles.of(files), ReadLimits.STANDARD);
    ReadingsReader readings = new ReadingsReader(MemoryFiles.of(files), ReadLimits.STANDARD);
    Told told =
        new Told(
            records.paths().stream().map(records::read).toList(),
            readings.paths().stream().map(readings::read).toList());
    return told.records().isEmpty() && told.readings().isEmpty()
        ? Optional.empty()
        : Optional.of(told);
  }

  /** What of it fits a plan. */
  public Intake intake(Facts plan) {
    return Intake.of(plan, records, readings);
  }
}
