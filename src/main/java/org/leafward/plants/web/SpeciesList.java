package org.leafward.plants.web;

import java.util.List;

/**
 * A page of species.
 *
 * @param items the species on this page
 * @param page number of the page, from 0
 * @param size most that a page holds
 * @param total number of species found
 */
record SpeciesList(List<SpeciesView> items, int page, int size, int total) {
}
