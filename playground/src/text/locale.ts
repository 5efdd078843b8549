/** Language of words, numbers and dates on screen. */
export const locale = "en-GB";
