package org.leafward.reminders;

import java.util.List;
import org.leafward.accounts.EmailAddress;
import org.leafward.measure.BadInput;
import org.leafward.reminders.store.SuppressionTable;
import org.springframework.stereotype.Service;

/** Addresses to which no reminders go, for those who run the server. */
@Service
public class Suppressions {

	private static final int LARGEST_PAGE = 200;

	private static final int LAST_PAGE = 100_000;

	private final SuppressionTable table;

	Suppressions(SuppressionTable table) {
		this.table = table;
	}

	/**
	 * A page of addresses.
	 *
	 * @param addresses the latest first
	 * @param more whether there is a next page
	 */
	public record Page(List<Suppressed> addresses, boolean more) {
	}

	/**
	 * Addresses that get nothing.
	 * @param page from 0 to 100,000
	 * @param size 1 to 200
	 * @return the latest first
	 * @throws BadInput if page or size are out of range
	 */
	public Page list(int page, int size) {
		if (page < 0 || page > LAST_PAGE || size < 1 || size > LARGEST_PAGE) {
			throw new BadInput("page %d or size %d is out of range".formatted(page, size), "page", "start at page 0");
		}
		List<Suppressed> some = this.table.list((long) page * size, size + 1);
		return new Page(some.subList(0, Math.min(size, some.size())), some.size() > size);
	}

	/**
	 * Lets no more reminders go to an address.
	 * @param address the address
	 * @param reason why, one line
	 * @throws BadInput when it is no address
	 */
	public void suppress(String address, String reason) {
		this.table.suppress(EmailAddress.read("address", address), reason);
	}

	/**
	 * Lets reminders go to an address again.
	 * @param address the address
	 */
	public void lift(String address) {
		this.table.lift(address);
	}

}
