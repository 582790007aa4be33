/** Lies beside the files of an export, for whoever opens them in ten years without the program. */
export const READ_ME = `This folder holds everything an Underlane store kept at one moment, as files any program can open.

index.csv      one line for each document: what it is, its name, its version, when it was changed, its file
crossings/     the crossing files, one JSON document each; beside each, as .plan.json, the result as it was
               worked out when the crossing was last saved (SI units; each name ends in its unit)
other folders  jobs, customers, tools and so on, one JSON document each; in attachments also the pictures
               and papers themselves
removed/       documents that had been removed, in folders of the same names
history.jsonl  one line for each change there ever was: who, when, from where, and the document as it was
               from then on

A quantity in a document is a text with its unit, such as "46 ft 6 in". The part of a file name between the
points is the id by which one document speaks of another. A crossing file can be planned again as it is.
Who may sign in is not in here: that is in a backup only.
`
