using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Passagework.Sound.Performance;
using Passagework.Studio.Features.Sound;

namespace Passagework.Studio.Tests.Features.Sound;

public sealed class SoundAddressesTests : IAsyncLifetime
{
    private readonly HttpClient _web = new();
    private readonly PlayedSound _sound = Heard.Plan(Heard.Line(), new SoundWishes { Loops = false });
    private WebApplication _app = null!;
    private string _name = "";

    public async ValueTask InitializeAsync()
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        builder.Logging.ClearProviders();
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.AddSound();
        _app = builder.Build();
        _app.MapSound();
        await _app.StartAsync();
        _web.BaseAddress = new Uri(_app.Urls.First());
        _name = _app.Services.GetRequiredService<SoundStore>().Add(_sound);
    }

    public async ValueTask DisposeAsync()
    {
        _web.Dispose();
        await _app.DisposeAsync();
    }

    [Fact]
    public async Task The_times_are_those_of_the_engine() =>
        Assert.Equal(
            TimeMapJson.Of(_sound.Times).ToJsonString(),
            await _web.GetStringAsync(Address("times"), TestContext.Current.CancellationToken)
        );

    [Fact]
    public async Task Samples_come_as_32_bit_numbers()
    {
        var bytes = await _web.GetByteArrayAsync(
            Address("180000-190000"),
            TestContext.Current.CancellationToken
        );

        Assert.Equal(40_000, bytes.Length);
        Assert.InRange(Heard.Floats(bytes).Max(Math.Abs), 0.05, 0.9);
        Assert.Equal(Heard.Pcm(_sound, 180_000, 10_000), Heard.Floats(bytes));
    }

    [Theory]
    [InlineData("0-0")]
    [InlineData("10-5")]
    [InlineData("0-176401")]
    [InlineData("0-9223372036854775808")]
    [InlineData("-5-10")]
    [InlineData("1-2-3")]
    [InlineData("all")]
    public async Task A_range_that_cannot_be_is_refused_in_a_sentence(string range)
    {
        var answer = await _web.GetAsync(Address(range), TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.StartsWith(
            "No such samples",
            await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Beyond_the_end_there_are_no_samples()
    {
        var end = _sound.Samples;

        Assert.Equal(HttpStatusCode.OK, await Status($"{end - 10}-{end}"));
        Assert.Equal(HttpStatusCode.BadRequest, await Status($"{end - 10}-{end + 1}"));
    }

    [Fact]
    public async Task A_sound_that_is_not_kept_is_not_found()
    {
        _app.Services.GetRequiredService<SoundStore>().Remove(_name);

        Assert.Equal(HttpStatusCode.NotFound, await Status("times"));
        Assert.Equal(HttpStatusCode.NotFound, await Status("0-10"));
    }

    private Uri Address(string what) => new($"/sound/{_name}/{what}", UriKind.Relative);

    private async Task<HttpStatusCode> Status(string what) =>
        (await _web.GetAsync(Address(what), TestContext.Current.CancellationToken)).StatusCode;
}
