package org.leafward.reminders;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.reminders.store.MessageTable;
import org.springframework.stereotype.Service;

/** Every mail that was made, whatever became of it. */
@Service
public class Outbox {

	private static final int LAST_PAGE = 100_000;

	private static final int LARGEST_PAGE = 200;

	private final MessageTable table;

	Outbox(MessageTable table) {
		this.table = table;
	}

	/**
	 * Mails to one person.
	 * @param person who got them
	 * @param page from 0 to 100,000
	 * @param size 1 to 200
	 * @return newest first
	 * @throws BadInput if page or size are out of range
	 */
	public MessagePage ofPerson(PersonId person, int page, int size) {
		return page(person, page, size);
	}

	/**
	 * Mails to everybody.
	 * @param page from 0 to 100,000
	 * @param size 1 to 200
	 * @return newest first
	 * @throws BadInput if page or size are out of range
	 */
	public MessagePage all(int page, int size) {
		return page(null, page, size);
	}

	/**
	 * One mail.
	 * @param id its identifier
	 * @return empty when there is none
	 */
	public Optional<Message> find(UUID id) {
		return this.table.find(id);
	}

	private MessagePage page(@Nullable PersonId person, int page, int size) {
		if (page < 0 || page > LAST_PAGE) {
			throw new BadInput("page %d is not 0 to %d".formatted(page, LAST_PAGE), "page", "start at page 0");
		}
		if (size < 1 || size > LARGEST_PAGE) {
			throw new BadInput("size %d is not 1 to %d".formatted(size, LARGEST_PAGE), "size", "ask for fewer");
		}
		// One more than asked for tells whether there is a next page.
		List<Message> mails = this.table.newest(person, (long) page * size, size + 1);
		return new MessagePage(mails.subList(0, Math.min(size, mails.size())), page, mails.size() > size);
	}

}
