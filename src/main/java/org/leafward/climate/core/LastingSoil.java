package org.leafward.climate.core;

import java.lang.ref.WeakReference;
import org.jspecify.annotations.Nullable;

/**
 * The soil of a record in one layer, kept while there is room: it is easily made again,
 * so it need not outlive the draws of one question. Safe for use by threads.
 */
final class LastingSoil {

	private final SoilLayer layer;

	private volatile WeakReference<@Nullable SoilTemperature> known = new WeakReference<>(null);

	LastingSoil(SoilLayer layer) {
		this.layer = layer;
	}

	SoilTemperature of(DailyRecord record) {
		SoilTemperature soil = this.known.get();
		if (soil == null) {
			soil = SoilTemperature.estimate(record, this.layer);
			this.known = new WeakReference<>(soil);
		}
		return soil;
	}

}
