using Passagework.Cli;

return App.Run(args, Terminal.OfProcess());
