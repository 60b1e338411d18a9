/**
 * The map as a picture of its own.
 */
@NullMarked
package org.leafward.regions.web;

import org.jspecify.annotations.NullMarked;
