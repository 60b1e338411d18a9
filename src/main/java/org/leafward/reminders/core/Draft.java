package org.leafward.reminders.core;

import java.util.List;
import org.leafward.reminders.core.Letter.Block;

/**
 * What a message of one series says, without its foot.
 *
 * @param subject the subject
 * @param title the first line
 * @param body what it is about
 * @param rest what the brief form adds to the subject
 * @param link the page that tells more
 */
record Draft(String subject, String title, List<Block> body, String rest, String link) {
}
