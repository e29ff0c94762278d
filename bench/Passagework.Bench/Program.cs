using BenchmarkDotNet.Running;
using Passagework.Bench;
using Passagework.Bench.Fuzz;
using Passagework.Bench.Sound;

if (args is ["fuzz", .. var rest])
{
    return FuzzCommand.Run(rest);
}

if (args is ["gallery", .. var folder])
{
    return GalleryCommand.Run(folder);
}

if (args is ["sound", .. var sound])
{
    return SoundCommand.Run(sound);
}

if (args is ["choosing", ..])
{
    return ChoosingCommand.Run();
}

BenchmarkSwitcher.FromAssembly(typeof(FuzzCommand).Assembly).Run(args);
return 0;
