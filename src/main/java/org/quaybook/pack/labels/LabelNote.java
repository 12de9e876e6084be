package org.quaybook.pack.labels;

/**
 * Which label goes where and why, in the order of the sheets.
 *
 * @param id stable name of the label inside its job
 * @param title what stands on it largest, in the language of the sheet
 * @param reason why it is there
 * @param spot which side of what it goes on
 * @param place the place in the words of the job; empty if the job does not say
 * @param content all that it says and shows, without job number and revision: equal for labels that need no new print
 */
public record LabelNote(String id, String title, LabelReason reason, LabelSpot spot, String place, String content) {}
