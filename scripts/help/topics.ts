/** The topics in words, in the order of the job. */
export const TOPICS: Readonly<Record<string, string>> = {
  refrigerant: "Refrigerants",
  cycle: "Refrigeration cycle",
  aircon: "Air conditioner",
  pool: "Pool",
  air: "Moist air",
  water: "Water",
  exchanger: "Heat exchanger",
  pipe: "Water pipe",
  line: "Refrigerant lines",
  pressure: "Pressures that hold",
  control: "Controls and sensors",
  cost: "Money",
  sink: "Other uses of the heat",
  climate: "Weather",
  note: "Working, checks and notes",
};

export const topicTitle = (topic: string): string => TOPICS[topic] ?? topic;
