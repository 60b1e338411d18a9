/** The JSON API of stations, their observations and freeze dates. */
@NullMarked
package org.leafward.climate.web;

import org.jspecify.annotations.NullMarked;
