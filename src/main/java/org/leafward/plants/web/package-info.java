/**
 * The catalogue as JSON.
 */
@NullMarked
package org.leafward.plants.web;

import org.jspecify.annotations.NullMarked;
