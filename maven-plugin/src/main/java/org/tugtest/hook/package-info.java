/**
 * The commit guard: the stand-alone program that checks what is about to be committed, the hook
 * that starts it, and how both get into a repository and out again.
 */
@NullMarked
package org.tugtest.hook;

import org.jspecify.annotations.NullMarked;
