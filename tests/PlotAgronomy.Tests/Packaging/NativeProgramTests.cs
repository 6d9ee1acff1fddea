namespace PlotAgronomy.Tests.Packaging;

/// <summary>The library in a native program compiled ahead of time: known answers, values as JSON by a context of its own,
/// and no trim warning of ours.</summary>
[Trait("Category", "Slow")]
[Collection(DotnetCommand.BuildsOfTheLibrary)]
public class NativeProgramTests(PackedLibrary packed)
{
    /// <summary>Prints one line an answer; what each must be stands in the test.</summary>
    private const string Program = """
        using System.Globalization;
        using System.Text.Json;
        using System.Text.Json.Serialization;
        using PlotAgronomy;
        using PlotAgronomy.Nutrients;
        using PlotAgronomy.Reference;
        using PlotAgronomy.Seeds;
        using PlotAgronomy.Soil;
        using PlotAgronomy.Spreading;
        using UnitsNet;

        static void Print(double value) => Console.WriteLine(value.ToString("0.000", CultureInfo.InvariantCulture));

        Print(ApplicationRate.FromPoundsPerThousandSquareFeet(90).PoundsPerAcre);
        Print(SpreaderSetting.FlowFor(ApplicationRate.FromPoundsPerAcre(8), Speed.FromMilesPerHour(3), Length.FromFeet(15)).Flow.PoundsPerMinute);
        var report = new SoilReport
        {
            Laboratory = "a laboratory",
            WaterPh = WaterPh.FromValue(5.8),
            SoilClass = SoilClass.Mineral,
            SampledDepth = Length.FromInches(8),
            Readings = [SoilReading.FromPrinted(SoilAnalyte.Phosphorus, 45, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3)],
        };
        Print(RecommendationSystem.NorthCarolina.Recommend(report, CropUse.Browsed(CropRow.DeerTurkeyPlot)).Phosphate!.Rate.PoundsPerAcre);
        Print(KindCatalog.Standard.Find("ladino").RequireSeedCount().SeedsPerPound > 400_000 ? 1 : 0);
        Print(Source.All.Length > 10 ? 1 : 0);
        string json = JsonSerializer.Serialize(new Note(ApplicationRate.FromPoundsPerAcre(20), Fraction.FromPercent(85)), Notes.Default.Note);
        Console.WriteLine(json);
        Print(JsonSerializer.Deserialize(json, Notes.Default.Note)!.Rate.PoundsPerAcre);

        internal sealed record Note(ApplicationRate Rate, Fraction Germination);

        [JsonSerializable(typeof(Note))]
        internal sealed partial class Notes : JsonSerializerContext;
        """;

    /// <summary>90 x 43.56 exactly; practice case C59 (8 x 3 x 15 / 495); practice case C19 (North Carolina equation 14 at P-I 45);
    /// ladino is counted by the hundred thousands in every source; the tables are embedded;
    /// the JSON is what was put in.</summary>
    private static readonly string[] KnownAnswers = ["3920.400", "0.727", "49.740", "1.000", "1.000", """{"Rate":"20 lb/ac","Germination":"85 %"}""", "20.000"];

    [Fact]
    public void A_native_program_gives_known_answers_and_only_UnitsNet_warns()
    {
        bool underCi = Environment.GetEnvironmentVariable("CI") == "true";
        Assert.SkipWhen(!underCi && !HasLinker(), "no C linker (gcc or clang) on this machine: the native program cannot be linked");

        string folder = packed.LayConsumer("Native", Program, "<PublishAot>true</PublishAot><InvariantGlobalization>true</InvariantGlobalization><TrimmerSingleWarn>false</TrimmerSingleWarn><IlcTreatWarningsAsErrors>false</IlcTreatWarningsAsErrors>");
        var (exit, log) = DotnetCommand.Run(folder, "publish", "-c", "Release", "-o", Path.Combine(folder, "out"));
        Assert.True(exit == 0, log);
        Assert.Empty(log.Split('\n').Where(l => l.Contains("warning", StringComparison.OrdinalIgnoreCase) && !l.Contains("UnitsNet", StringComparison.Ordinal)));

        var (ran, output) = DotnetCommand.RunProgram(Path.Combine(folder, "out", OperatingSystem.IsWindows() ? "Native.exe" : "Native"), folder);
        Assert.True(ran == 0, output);
        Assert.Equal(KnownAnswers, output.ReplaceLineEndings("\n").TrimEnd().Split('\n'));
    }

    private static bool HasLinker() =>
        OperatingSystem.IsWindows() || new[] { "gcc", "clang" }.Any(tool => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(p => File.Exists(Path.Combine(p, tool))));
}
