using BenchmarkDotNet.Running;
using Passagework.Bench.Fuzz;

if (args is ["fuzz", .. var rest])
{
    return FuzzCommand.Run(rest);
}

BenchmarkSwitcher.FromAssembly(typeof(FuzzCommand).Assembly).Run(args);
return 0;
