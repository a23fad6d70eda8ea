import type { NoticeTexts } from '../notice-texts.ts';

export const chartTexts = {
  'chart-empty': { says: 'The chart of tool {serial} has no setting for tightening.', remedy: 'Enter the settings from its certificate.' },
  'chart-other-serial': {
    says: 'The chart belongs to serial number {chartSerial}, the tool is {serial}.',
    remedy: 'Load the certificate of this very tool. A chart of a sister tool does not count.',
  },
  'chart-torque-absurd': {
    says: 'The torque at {setting} is not a plausible number.',
    remedy: 'Copy the figure again from the certificate, with its unit.',
  },
  'chart-setting-twice': {
    says: '{setting} is listed twice, with {first} and {second}.',
    remedy: 'Keep the line the certificate shows.',
  },
  'chart-not-monotone': {
    says: 'The torque does not rise from {lower} ({lowerTorque}) to {upper} ({upperTorque}).',
    remedy:
      'Check both cells against the certificate; if they stand there, have the tool calibrated again. The chart is not used until then.',
  },
  'chart-gap': {
    says: 'Between {lower} and {upper} settings are missing.',
    remedy: 'Enter the missing lines; if they were not measured, number only what was.',
  },
  'tool-too-small': {
    says: 'Tool {tool} reaches {largest} at most; the method asks for {low} to {high}.',
    remedy: 'Take a larger tool, a multiplier, or a method and lubricant that need less torque.',
  },
  'tool-too-large': {
    says: 'The lowest setting of tool {tool} gives {smallest}; the method asks for {low} to {high}.',
    remedy: 'Take a smaller tool.',
  },
  'chart-too-coarse': {
    says: 'No calibrated setting of tool {tool} lies between {low} and {high}; the nearest give {below} and {above}.',
    remedy: 'Take another tool, have a setting between the two calibrated, or let the chart’s owner allow interpolation.',
  },
  'calibration-expired': {
    says: 'The calibration of tool {serial} ran out on {due}; the work is on {workDate}.',
    remedy: 'Calibrate it, or take a tool whose certificate covers the day.',
  },
  'calibration-later': {
    says: 'Tool {serial} was calibrated on {calibrated}, after the work date {workDate}.',
    remedy: 'Check both dates.',
  },
  'calibration-due-soon': {
    says: 'The calibration of tool {serial} falls due on {due}, in {days, plural, =0 {less than a day} one {# day} other {# days}}.',
    remedy: 'Book the calibration, or finish before that day.',
  },
  'setting-interpolated': {
    says: '{setting} was not measured: it is interpolated between its neighbours, as the chart’s owner allows.',
    remedy: 'Prefer a measured setting, or have this one calibrated.',
  },
  'accuracy-used-up': {
    says: 'The tool’s repeatability of ±{repeatability} uses up the accuracy the method allows; the certificate’s uncertainty comes on top.',
    remedy: 'Check the tool before each shift, and inspect with care.',
  },
} satisfies NoticeTexts<'chart'>;
