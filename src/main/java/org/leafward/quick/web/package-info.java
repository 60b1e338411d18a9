/**
 * The steps to a quick calendar, and the page that manages it.
 */
@NullMarked
package org.leafward.quick.web;

import org.jspecify.annotations.NullMarked;
