using BenchmarkDotNet.Running;
using Passagework.Bench;
using Passagework.Bench.Fuzz;

if (args is ["fuzz", .. var rest])
{
    return FuzzCommand.Run(rest);
}

if (args is ["gallery", .. var folder])
{
    return GalleryCommand.Run(folder);
}

BenchmarkSwitcher.FromAssembly(typeof(FuzzCommand).Assembly).Run(args);
return 0;
