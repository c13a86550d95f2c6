package org.tugtest.read;

/**
 * Bounds on what is read, so that hostile input ends in a clear problem.
 *
 * @param bytes greatest size of one file
 * @param depth greatest nesting of objects and lists
 * @param textLength greatest length of one text or name, UTF-16 units
 * @param files greatest number of files of one harness
 */
public record ReadLimits(long bytes, int depth, int textLength, int files) {
  /** What the goals use: 64 MiB, 32 deep, 4,000 characters, 1,000 files. */
  public static final ReadLimits STANDARD = new ReadLimits(64L << 20, 32, 4_000, 1_000);
}
