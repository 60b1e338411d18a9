package org.leafward.climate;

/**
 * The version of a record that an answer began with is no longer stored, as new
 * observations came in meanwhile. {@link OneVersion} asks again from the start.
 */
public final class RecordMovedOn extends RuntimeException {

	RecordMovedOn(StationId station, long wanted, long found) {
		super("version %d of the record of %s was asked for, version %d is stored; ask again".formatted(wanted,
				station.value(), found));
	}

}
