using Estimator.Cli;

return Verbs.Run(args, Console.In, Console.Out, Console.Error);
