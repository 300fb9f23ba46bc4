import webpack from "webpack";
import { configurations } from "../../webpack.config";

const compiler = webpack([...configurations]);
compiler.run((error, stats) => {
  if (error) throw error;
  console.log(stats?.toString({ preset: "summary", assets: true, errors: true, warnings: true, colors: false }));
});
