/** Licence and credit of the voices that the maker can use. */
export const voiceCredits = {
  mei: {
    credit:
      "HTS Voice “Mei”, released by the MMDAgent Project Team, copyright 2009–2013 Nagoya Institute of Technology, Department of Computer Science (http://www.mmdagent.jp/), CC BY 3.0 (https://creativecommons.org/licenses/by/3.0/)",
  },
  "tohoku-f01": {
    credit:
      "HTS voice tohoku-f01 (styles neutral, happy, sad, angry), copyright 2015 Intelligent Communication Network (Ito-Nose) Laboratory, Tohoku University, CC BY 4.0 (https://creativecommons.org/licenses/by/4.0/)",
  },
} as const;

/** What was done to the voices, as their licences ask us to say. */
export const voiceChanges =
  "Changed here: vocal tract, pitch, speech rate, phone durations and the voicing of /i/ and /u/ were varied to make eight invented readers. The makers of the voices do not endorse this use.";
