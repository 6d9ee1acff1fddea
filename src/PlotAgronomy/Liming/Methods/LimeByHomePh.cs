using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>The lime that may be due by a pH read with a strip or a meter: a range to plan by, never an order.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeByHomePh : IWorkedResult
{
    private static readonly ImmutableArray<SoilTexture> Widest = [SoilTexture.SandyLoam, SoilTexture.ClayLoam];

    private readonly LimeNeed least;
    private readonly LimeNeed most;

    private readonly double? wantedPh;

    private LimeByHomePh(HomePh reading, double? wantedPh, LimeNeed least, LimeNeed most)
    {
        Reading = reading;
        this.wantedPh = wantedPh;
        this.least = least;
        this.most = most;
    }

    /// <summary>Gets the reading.</summary>
    public HomePh Reading { get; }

    /// <summary>Gets the rate at the highest pH it may stand for; zero where that is as high as the kinds ask for.</summary>
    public ApplicationRate Low => Reading.High.Value >= wantedPh ? ApplicationRate.Zero : RateOf(least);

    /// <summary>Gets the rate at the lowest pH it may stand for.</summary>
    public ApplicationRate High => RateOf(most);

    /// <summary>Gets the pH both are counted to, the garden table's only one.</summary>
    public double TargetPh => most.TargetPh;

    /// <summary>Gets the lime both are counted in.</summary>
    public LimeBasis Basis => most.Method.Basis;

    /// <summary>Whether the texture is known; else the range spans sandy loam to clay loam.</summary>
    internal bool IsTextureKnown => least.Soil.Texture == most.Soil.Texture;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        [
            FindingCatalog.Create(
                LimingCodes.HomePhRange,
                ("reading", Reading.ToString()),
                ("low", LimeText.Tons(Low.PoundsPerAcre)),
                ("high", LimeText.Tons(High.PoundsPerAcre))
            ),
        ];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => most.Sources;

    /// <summary>The range for a soil; null where the garden table has no column for its texture, or no figure so sour.</summary>
    /// <param name="soil">Soil.</param>
    /// <param name="reading">Own reading.</param>
    /// <param name="wantedPh">pH that the kinds ask for, or null.</param>
    internal static LimeByHomePh? For(PlotSoil soil, HomePh reading, double? wantedPh)
    {
        var method = LimeMethod.All.First(m => m.Formula is TextureFormula);
        ImmutableArray<SoilTexture> textures = soil.Texture is { } known ? [known] : Widest;
        var least = At(textures[0], reading.High);
        var most = At(textures[^1], reading.Low);
        return RateKnown(least) && RateKnown(most) ? new(reading, wantedPh, least, most) : null;

        LimeNeed At(SoilTexture texture, WaterPh ph) =>
            method.NeedFor(
                soil with
                {
                    Texture = texture,
                    WaterPh = WaterPh.FromValue(Math.Max(ph.Value, method.LowestReading)),
                },
                method.TargetPhs.Max()
            );
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [.. least.ShowWork(), .. most.ShowWork()];

    /// <summary>Above the table's last row little or nothing is due: zero is the low end of a range.</summary>
    private static bool RateKnown(LimeNeed need) => need.Rate is not null || need.Stop == LimeStop.ReadingOutside;

    private static ApplicationRate RateOf(LimeNeed need) => need.Rate?.OfBasis ?? ApplicationRate.Zero;

    /// <summary>The range.</summary>
    /// <returns>Text such as <c>0.65 to 2.87 ton/ac</c>.</returns>
    public override string ToString() => $"{LimeText.Tons(Low.PoundsPerAcre)} to {LimeText.Tons(High.PoundsPerAcre)} ton/ac";
}
