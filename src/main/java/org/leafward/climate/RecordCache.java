package org.leafward.climate;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.store.StoredStation;

/**
 * Daily records that were read lately, up to a number of bytes; those not used for
 * longest go first. Safe for use by threads: two that miss the same record both read it.
 */
final class RecordCache {

	private final long mostBytes;

	private final Function<StationId, DailyRecord> read;

	private final Map<StationId, Kept> kept = new LinkedHashMap<>(16, 0.75f, true);

	private long bytes;

	/**
	 * Makes an empty cache.
	 * @param mostBytes bound on what is kept
	 * @param read gets a record
	 */
	RecordCache(long mostBytes, Function<StationId, DailyRecord> read) {
		this.mostBytes = mostBytes;
		this.read = read;
	}

	/**
	 * The record of a station.
	 * @param stored the station with the version of its record
	 * @return the record of that version or a newer one
	 */
	DailyRecord get(StoredStation stored) {
		StationId id = stored.station().id();
		synchronized (this.kept) {
			Kept known = this.kept.get(id);
			if (known != null && known.version == stored.recordVersion()) {
				return known.record;
			}
		}
		DailyRecord record = this.read.apply(id);
		synchronized (this.kept) {
			Kept before = this.kept.put(id, new Kept(record, stored.recordVersion()));
			this.bytes += record.bytes() - ((before != null) ? before.record.bytes() : 0);
			Iterator<Kept> oldest = this.kept.values().iterator();
			while (this.bytes > this.mostBytes && oldest.hasNext()) {
				this.bytes -= oldest.next().record.bytes();
				oldest.remove();
			}
		}
		return record;
	}

	private record Kept(DailyRecord record, long version) {
	}

}
