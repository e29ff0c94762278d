using Passagework.Studio.Hosting;

namespace Passagework.Studio.Tests.Hosting;

public class RestingMemoryTests
{
    [Theory]
    [InlineData(0, 50_000_000, true)]
    [InlineData(5_000_000, 50_000_000, false)]
    [InlineData(0, 1_000_000, false)]
    public void It_is_given_back_once_when_nobody_works(long allocated, long sinceCollected, bool isTime) =>
        Assert.Equal(isTime, RestingMemory.IsTime(allocated, sinceCollected));
}
