package org.tugtest.files;

import org.tugtest.read.ReadLimits;

/** Which files may belong to a harness and how long they may be, wherever they are kept. */
public record Scope(Folders folders, Choice choice, ReadLimits limits) {}
