// Reads alerts with a reader of CAP 1.2 that is none of ours (@dec112/cap-ts) and prints what it sees as JSON.
//   node check-cap.mjs <file>
// The file holds one document after the other, parted by a NUL.
import { readFileSync } from 'node:fs';
import cap from '@dec112/cap-ts';

const documents = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(readFileSync(process.argv[2])).split('\0');
const known = cap.CAP_1_2;
const words = (alert) => ({
  ...alert,
  status: known._to_string_Alert_status(alert.status),
  msgType: known._to_string_Alert_msgType(alert.msgType),
  info_list: alert.info_list.map((info) => ({
    ...info,
    urgency: known._to_string_Alert_info_list_info_urgency(info.urgency),
    severity: known._to_string_Alert_info_list_info_severity(info.severity),
    certainty: known._to_string_Alert_info_list_info_certainty(info.certainty),
  })),
});
const alerts = await Promise.all(documents.map((text) => known.Alert.fromXML(text)));
process.stdout.write(JSON.stringify(alerts.map(words)));
