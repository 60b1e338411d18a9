package org.leafward.care.on;

import java.time.Duration;
import org.leafward.care.AddedTasks;
import org.leafward.care.KeptCalculations;
import org.leafward.care.Replanning;
import org.leafward.care.RulePackPublished;
import org.leafward.climate.ForecastChanged;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.ObservationsLoaded;
import org.leafward.measure.GeoPoint;
import org.leafward.register.BedsChanged;
import org.leafward.register.PlantingsChanged;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.register.SitePlaceChanged;
import org.leafward.register.SiteRegistered;
import org.leafward.register.SoilTestsChanged;
import org.leafward.register.WateringsChanged;
import org.springframework.scheduling.annotation.Async;
import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionalEventListener;

/** Derives tasks again when something below changed. */
@Component
class ReplanListeners {

	private static final Duration AT_ONCE = Duration.ofMinutes(5);

	private final Replanning replanning;

	private final Register register;

	private final KeptCalculations kept;

	private final AddedTasks added;

	ReplanListeners(Replanning replanning, Register register, KeptCalculations kept, AddedTasks added) {
		this.replanning = replanning;
		this.register = register;
		this.kept = kept;
		this.added = added;
	}

	/*
	 * The first six run in the caller's thread right after its commit, so that somebody
	 * who adds a planting and then looks at the calendar sees it there. When they fail,
	 * the publication stays and is taken up again.
	 */

	@TransactionalEventListener(id = "care.site-registered")
	void on(SiteRegistered event) {
		this.replanning.derive(new SiteId(event.site()));
	}

	@TransactionalEventListener(id = "care.site-place-changed")
	void on(SitePlaceChanged event) {
		this.replanning.derive(new SiteId(event.site()));
	}

	@TransactionalEventListener(id = "care.plantings-changed")
	void on(PlantingsChanged event) {
		this.replanning.derive(new SiteId(event.site()));
		this.kept.tidy(new SiteId(event.site()));
		this.added.tidy(new SiteId(event.site()));
	}

	@TransactionalEventListener(id = "care.beds-changed")
	void on(BedsChanged event) {
		this.replanning.derive(new SiteId(event.site()));
	}

	@TransactionalEventListener(id = "care.waterings-changed")
	void on(WateringsChanged event) {
		this.replanning.derive(new SiteId(event.site()));
	}

	@TransactionalEventListener(id = "care.soil-tests-changed")
	void on(SoilTestsChanged event) {
		this.replanning.derive(new SiteId(event.site()));
	}

	/*
	 * A station can concern thousands of sites: queue them, then work the queue off
	 * outside the request. Not in a transaction: it would hold a connection all the while
	 * and each site takes one of its own.
	 */
	@Async
	@TransactionalEventListener(id = "care.observations-loaded")
	void on(ObservationsLoaded event) {
		around(event.latitude(), event.longitude());
	}

	@Async
	@TransactionalEventListener(id = "care.forecast-changed")
	void on(ForecastChanged event) {
		around(event.latitude(), event.longitude());
	}

	private void around(double latitude, double longitude) {
		this.replanning
			.ask(this.register.sitesNear(new GeoPoint(latitude, longitude, 0), LocalClimate.STATION_RADIUS_KILOMETRES));
		this.replanning.drain(AT_ONCE);
	}

	@Async
	@TransactionalEventListener(id = "care.rule-pack-published")
	void on(RulePackPublished event) {
		this.replanning.askAll();
		this.replanning.drain(AT_ONCE);
	}

}
