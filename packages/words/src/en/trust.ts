/** The page that walks a phone through trusting the yard's own authority. */
export const TRUST_TEXTS = {
  'trust.title': 'Let this device trust the yard',
  'trust.why':
    'The yard’s server speaks over an encrypted connection with a certificate of its own. Until this device trusts it, the browser warns, and gives no camera and no work without network. It is done once for each device.',
  'trust.compare': 'Compare the fingerprint',
  'trust.compare-text':
    'This page itself is not protected. Compare these 32 pairs with those that the server printed when it was started, or that the planner reads to you. If one differs, stop.',
  'trust.get': 'Get the certificate',
  'trust.get-link': 'Download the certificate of the yard’s authority',
  'trust.install': 'Install it',
  'trust.install-text': 'Names of menus differ a little from device to device.',
  'trust.android': 'Android',
  'trust.android-1': 'Open Settings and search for “CA certificate” (mostly under Security, then Encryption and credentials).',
  'trust.android-2': 'Choose CA certificate, read the warning, choose Install anyway, and pick the downloaded file.',
  'trust.ios': 'iPhone and iPad',
  'trust.ios-1': 'Allow the download. Open Settings, tap Profile Downloaded at the top, and install it.',
  'trust.ios-2': 'Then open General, About, Certificate Trust Settings, and switch it on. Without this second step it is not trusted.',
  'trust.laptop': 'Laptop',
  'trust.laptop-1':
    'Windows: open the file, Install certificate, Local machine, and place it in Trusted Root Certification Authorities. macOS: open it in Keychain Access and set it to Always trust. Firefox has a list of its own under Settings, Certificates.',
  'trust.try': 'Try it',
  'trust.try-text': 'One of these opens without a warning when it worked:',
  'trust.limits': 'What you allow by this',
  'trust.limits-text':
    'The authority can certify private names and addresses only, such as 192.168.0.1 or a name that ends in .local, and the names it was made for: {names}. It cannot pose as any public site. It runs out on {until}.',
  'trust.undo':
    'To take it back, remove the certificate where you installed it. If the server’s folder is stolen, remove it from every device and make a new authority.',
  'trust.trusted': 'This device trusts the yard',
  'trust.trusted-text': 'Camera and work without network are available at this address. You need not keep the downloaded file.',
  'trust.go-on': 'Go on',
} as const;
