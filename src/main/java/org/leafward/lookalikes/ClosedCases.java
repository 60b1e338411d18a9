package org.leafward.lookalikes;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.leafward.lookalikes.core.Cause;
import org.leafward.lookalikes.store.CaseTable;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.stereotype.Service;

/** What was found, as facts without people and exact places. */
@Service
public class ClosedCases {

	/** Of one region at a time there are a few dozen; a bound against more. */
	private static final int MOST = 2_000;

	private static final double PER_DEGREE = 10;

	private final CaseTable table;

	private final Register register;

	private final LookalikeKeys keys;

	ClosedCases(CaseTable table, Register register, LookalikeKeys keys) {
		this.table = table;
		this.register = register;
		this.keys = keys;
	}

	/**
	 * Cases that were closed with a cause.
	 * @param day first seen on this day or later
	 * @return the latest first, at most 2,000
	 */
	public List<CaseClosed> since(LocalDate day) {
		return this.table.closedSince(day, MOST).stream().map(this::facts).toList();
	}

	/**
	 * What a cause is called.
	 * @param cause its identifier
	 * @return in English, "suspected" where only a laboratory can tell; empty for none of
	 * the key
	 */
	public Optional<String> title(String cause) {
		return this.keys.current().cause(cause).map(Cause::title);
	}

	/** The facts of a closed case, its place to a tenth of a degree. */
	CaseClosed facts(PlantCase one) {
		SiteId id = one.site();
		Site site = (id != null) ? this.register.find(id).orElse(null) : null;
		Basis basis = one.basis();
		LocalDate closed = one.closedOn();
		if (basis == null || closed == null) {
			throw new IllegalStateException("a closed case has a basis and a day");
		}
		return new CaseClosed(one.id().value(), one.cause(), basis.name(), one.county(),
				(site != null) ? tenths(site.point().latitude()) : null,
				(site != null) ? tenths(site.point().longitude()) : null,
				(one.species() != null) ? one.species().value() : null, one.seen(), closed);
	}

	private static double tenths(double degrees) {
		return Math.round(degrees * PER_DEGREE) / PER_DEGREE;
	}

}
