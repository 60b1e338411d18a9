package org.leafward.care;

import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.amounts.calculator.Calculation;
import org.leafward.amounts.calculator.Calculations;
import org.leafward.care.core.keep.Keeping;
import org.leafward.care.store.KeptTable;
import org.leafward.care.store.SitePlanTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.register.Bed;
import org.leafward.register.Beds;
import org.leafward.register.NewBed;
import org.leafward.register.NewSoilTest;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteBeds;
import org.leafward.register.SiteId;
import org.leafward.register.SiteSetting;
import org.leafward.register.SoilTests;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Keeps answers of calculators for plantings: their figures go into the register, so that
 * the tasks come to the same amounts, and what was asked is kept beside them.
 */
@Service
public class KeptCalculations {

	/** A bound against scripts, and as many as anybody reads. */
	private static final int MOST = 100;

	/** More soil tests than a bed has on a day. */
	private static final int TESTS = 200;

	private final Calculations calculations;

	private final KeptTable table;

	private final Register register;

	private final Beds beds;

	private final SoilTests soilTests;

	private final SitePlanTable plans;

	private final Clock clock;

	KeptCalculations(Calculations calculations, KeptTable table, Register register, Beds beds, SoilTests soilTests,
			SitePlanTable plans, Clock clock) {
		this.calculations = calculations;
		this.table = table;
		this.register = register;
		this.beds = beds;
		this.soilTests = soilTests;
		this.plans = plans;
		this.clock = clock;
	}

	/**
	 * What keeping would change; nothing is changed yet.
	 * @param calculation the answer
	 * @param id for which planting
	 * @param sampled for a soil test the day of the sample; null for today
	 * @return the changes
	 * @throws NotThere when there is no such planting
	 * @throws BadInput when a figure is out of the bounds of a planting
	 */
	public Keeping look(Calculation calculation, PlantingId id, @Nullable LocalDate sampled) {
		Planting planting = planting(id);
		Site site = this.beds.with(this.register.require(planting.site())).around(planting);
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), site.zone());
		return Keeping.of(calculation, planting, site, today, (sampled != null) ? sampled : today);
	}

	/**
	 * Keeps an answer. Its tasks are derived again when this returns. The same answer on
	 * the same day is kept once; its figures are set anew all the same.
	 * @param calculation the answer
	 * @param id for which planting
	 * @param sampled for a soil test the day of the sample; null for today
	 * @param by who; null for an operator
	 * @return what was changed
	 * @throws NotThere when there is no such planting
	 * @throws BadInput when a figure is out of the bounds of a planting, the day of a
	 * sample can't be, or the planting has {@value #MOST} calculations
	 */
	public Keeping keep(Calculation calculation, PlantingId id, @Nullable LocalDate sampled, @Nullable PersonId by) {
		Planting asked = planting(id);
		Site site = this.register.require(asked.site());
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), site.zone());
		KeptCalculation row = row(site.id(), id, calculation, today, by);
		return this.register.together(() -> {
			// Whoever forgets the site right now is waited for; afterwards it is not
			// there.
			this.plans.lock(List.of(site.id()));
			Planting planting = planting(id);
			SiteBeds ground = this.beds.with(this.register.require(site.id()));
			Keeping keeping = Keeping.of(calculation, planting, ground.around(planting), today,
					(sampled != null) ? sampled : today);
			this.register.changeFigures(id, (now) -> keeping.figures());
			Double flow = keeping.litresPerMinute();
			Optional<Bed> bed = ground.of(planting).filter((one) -> one.litresPerMinute() != null);
			if (flow != null && bed.isPresent()) {
				this.beds.change(bed.get().id(), (now) -> new NewBed(now.name(), now.sun(), now.wind(), flow));
			}
			else if (flow != null) {
				this.register.change(site.id(),
						(now) -> new SiteSetting(now.place(), now.region(), now.features(), flow));
			}
			NewSoilTest test = keeping.soilTest();
			if (test != null && !isKept(site.id(), test)) {
				this.soilTests.keep(site.id(), test, by);
			}
			add(row);
			return keeping;
		});
	}

	private boolean isKept(SiteId site, NewSoilTest test) {
		return this.soilTests.latest(site, 0, TESTS)
			.stream()
			.anyMatch((one) -> test.planting() != null && test.planting().equals(one.planting())
					&& one.day().equals(test.day()) && one.figures().equals(test.figures())
					&& one.depthCentimetres() == test.depthCentimetres() && one.drainage() == test.drainage());
	}

	/**
	 * Takes in what somebody brings back; the register has its figures already.
	 * @param site the site
	 * @param planting one of its plantings
	 * @param calculator name of the calculator
	 * @param inputs what it was asked
	 * @param day on which it was kept
	 * @param by who brings it
	 * @throws BadInput when the calculator doesn't answer
	 */
	public void bringBack(SiteId site, PlantingId planting, String calculator, String inputs, LocalDate day,
			PersonId by) {
		if (!this.calculations.titles().containsKey(calculator)) {
			throw new BadInput("there is no calculator '%s'".formatted(calculator), "calculator",
					"write one of: " + String.join(", ", this.calculations.titles().keySet()));
		}
		Calculation calculation = this.calculations.of(calculator, Calculation.inputs(inputs));
		add(row(site, planting, calculation, day, by));
	}

	private KeptCalculation row(SiteId site, PlantingId planting, Calculation calculation, LocalDate day,
			@Nullable PersonId by) {
		String inputs = calculation.query();
		if (inputs.length() > KeptCalculation.LONGEST_INPUTS) {
			throw new BadInput("the figures have %d characters; at most %d are kept".formatted(inputs.length(),
					KeptCalculation.LONGEST_INPUTS), "inputs", "leave out what the answer doesn't need");
		}
		String words = calculation.words();
		return new KeptCalculation(UUID.randomUUID(), site, planting, by, calculation.calculator(), inputs,
				words.substring(0, Math.min(words.length(), KeptCalculation.LONGEST_WORDS)), day,
				this.clock.instant().truncatedTo(ChronoUnit.MICROS));
	}

	private void add(KeptCalculation row) {
		if (this.table.add(row) && this.table.count(row.planting()) > MOST) {
			throw new BadInput("one planting has at most %d kept calculations".formatted(MOST), "planting",
					"delete those that are no longer needed first");
		}
	}

	/**
	 * A page of what was kept for a planting, the latest first.
	 * @param planting the planting
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	public List<KeptCalculation> latest(PlantingId planting, int page, int size) {
		return this.table.latest(planting, page, size);
	}

	/**
	 * Deletes a kept calculation; the figures of the planting stay.
	 * @param site the site
	 * @param id which
	 * @return the planting for which it was kept
	 * @throws NotThere when the site has none such
	 */
	public PlantingId remove(SiteId site, UUID id) {
		return this.table.remove(site, id).orElseThrow(() -> new NotThere("There is no kept calculation " + id));
	}

	/**
	 * Forgets what was kept for plantings that are no more, in a transaction of its own,
	 * as it is called when that of a change has ended.
	 * @param site the site
	 */
	@Transactional(propagation = Propagation.REQUIRES_NEW)
	public void tidy(SiteId site) {
		this.table.keepOnly(site, this.register.plantingsOf(site).stream().map(Planting::id).toList());
	}

	private Planting planting(PlantingId id) {
		return this.register.find(id).orElseThrow(() -> new NotThere("There is no planting " + id));
	}

}
