import type { NoticeTexts } from '../notice-texts.ts';

export const chartTexts = {
  'chart-empty': {
    says: 'A tabela da ferramenta {serial} não tem nenhuma regulação para apertar.',
    remedy: 'Anotar as regulações do seu certificado de calibração.',
  },
  'chart-other-serial': {
    says: 'A tabela é do número de série {chartSerial}, a ferramenta é {serial}.',
    remedy: 'Carregar o certificado desta mesma ferramenta. A tabela de uma ferramenta gémea não vale.',
  },
  'chart-torque-absurd': {
    says: 'O binário em {setting} não é um número credível.',
    remedy: 'Copiar outra vez o valor do certificado, com a sua unidade.',
  },
  'chart-setting-twice': {
    says: '{setting} aparece duas vezes, com {first} e {second}.',
    remedy: 'Deixar a linha que o certificado mostra.',
  },
  'chart-not-monotone': {
    says: 'O binário não sobe de {lower} ({lowerTorque}) para {upper} ({upperTorque}).',
    remedy:
      'Comparar ambas as células com o certificado; se estiverem assim, mandar calibrar outra vez a ferramenta. Até lá a tabela não se usa.',
  },
  'chart-gap': {
    says: 'Entre {lower} e {upper} faltam regulações.',
    remedy: 'Anotar as linhas que faltam; se não foram medidas, numerar só o que foi.',
  },
  'tool-too-small': {
    says: 'A ferramenta {tool} chega no máximo a {largest}; o método pede de {low} a {high}.',
    remedy: 'Pegar numa ferramenta maior, num multiplicador, ou num método e num lubrificante que precisem de menos binário.',
  },
  'tool-too-large': {
    says: 'A regulação mais baixa da ferramenta {tool} dá {smallest}; o método pede de {low} a {high}.',
    remedy: 'Pegar numa ferramenta menor.',
  },
  'chart-too-coarse': {
    says: 'Nenhuma regulação calibrada da ferramenta {tool} está entre {low} e {high}; as mais próximas dão {below} e {above}.',
    remedy: 'Pegar noutra ferramenta, mandar calibrar uma regulação entre as duas, ou o dono da tabela admite interpolar.',
  },
  'calibration-expired': {
    says: 'A calibração da ferramenta {serial} caducou em {due}; o trabalho é em {workDate}.',
    remedy: 'Calibrá-la, ou pegar numa ferramenta cujo certificado cubra o dia.',
  },
  'calibration-later': {
    says: 'A ferramenta {serial} foi calibrada em {calibrated}, depois do dia do trabalho {workDate}.',
    remedy: 'Verificar ambas as datas.',
  },
  'calibration-due-soon': {
    says: 'A calibração da ferramenta {serial} vence em {due}, daqui a {days, plural, =0 {menos de um dia} one {# dia} other {# dias}}.',
    remedy: 'Marcar a calibração, ou acabar antes desse dia.',
  },
  'setting-interpolated': {
    says: '{setting} não foi medida: está interpolada entre as vizinhas, como o dono da tabela admite.',
    remedy: 'Preferir uma regulação medida, ou mandar calibrar esta.',
  },
  'accuracy-used-up': {
    says: 'A repetibilidade da ferramenta, ±{repeatability}, esgota a exatidão que o método admite; a incerteza do certificado soma-se a isso.',
    remedy: 'Verificar a ferramenta antes de cada turno, e inspecionar com cuidado.',
  },
} satisfies NoticeTexts<'chart'>;
