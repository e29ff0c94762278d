using BenchmarkDotNet.Running;
using Passagework.Bench;
using Passagework.Bench.Fuzz;
using Passagework.Bench.Sound;
using Passagework.Bench.Studio;

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

if (args is ["takes", .. var takes])
{
    return TakesCommand.Run(takes);
}

if (args is ["anchors", .. var file])
{
    return AnchorsCommand.Run(file);
}

if (args is ["choosing", ..])
{
    return ChoosingCommand.Run();
}

if (args is ["studio", .. var browser])
{
    return await StudioCommand.Run(browser);
}

if (args is ["discover", .. var size])
{
    return DiscoverCommand.Run(size);
}

BenchmarkSwitcher.FromAssembly(typeof(FuzzCommand).Assembly).Run(args);
return 0;
