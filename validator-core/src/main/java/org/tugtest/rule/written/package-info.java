/** Rules on what is written: files, references, ids, wire ends, cavities, waivers, decisions. */
@NullMarked
package org.tugtest.rule.written;

import org.jspecify.annotations.NullMarked;
