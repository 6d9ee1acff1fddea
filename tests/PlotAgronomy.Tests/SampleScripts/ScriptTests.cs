using System.Xml.Linq;
using PlotAgronomy.Tests.Packaging;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.SampleScripts;

/// <summary>The programs of one file in <c>samples/scripts</c>, run as a reader runs them, against their approved outputs. That
/// the outputs stand still is all these tests say; the numbers are held by the tests of their rooms.</summary>
[Collection(DotnetCommand.BuildsOfTheLibrary)]
public class ScriptTests
{
    private const int MostLines = 59;

    private static readonly string Folder = Repository.PathOf("samples/scripts");

    /// <summary>These run until they are stopped, and have tests of their own.</summary>
    private static readonly string[] Services = ["serve.cs", "open-page.cs"];

    public static TheoryData<string> Scripts => [.. Directory.GetFiles(Folder, "*.cs").Select(f => Path.GetFileName(f)).Except(Services).Order(StringComparer.Ordinal)];

    [Theory, MemberData(nameof(Scripts)), Trait("Category", "Slow")]
    public void A_script_prints_what_is_approved(string script) =>
        ApprovedText.AssertCurrent(Path.Combine(Folder, Path.ChangeExtension(script, ".approved.txt")), Run(script));

    /// <summary>The chart of the county is a drawing with a bar for each share above zero.</summary>
    [Fact, Trait("Category", "Slow")]
    public void The_county_draws_its_chart()
    {
        string chart = Path.Combine(Path.GetTempPath(), $"county-{Environment.ProcessId}.svg");
        try
        {
            Run("county.cs", "--", chart);
            XNamespace svg = "http://www.w3.org/2000/svg";
            string[] words = [.. XDocument.Load(chart).Descendants(svg + "text").Select(t => t.Value.Trim())];
            foreach (string district in new[] { "Fern Creek", "Mill Hollow", "Long Ridge" })
            {
                Assert.Equal(2, words.Count(w => w.StartsWith(district, StringComparison.Ordinal)));
            }
        }
        finally
        {
            File.Delete(chart);
        }
    }

    [Theory, MemberData(nameof(Scripts))]
    public void A_script_is_short(string script) =>
        Assert.InRange(File.ReadAllLines(Path.Combine(Folder, script)).Length, 1, MostLines);

    [Fact]
    public void Every_approved_output_has_its_script() =>
        Assert.All(Directory.GetFiles(Folder, "*.approved.txt"), f => Assert.True(File.Exists(f.Replace(".approved.txt", ".cs", StringComparison.Ordinal)), f));

    private static string Run(string script, params string[] more)
    {
        (int exitCode, string said) = DotnetCommand.Run(Repository.Root, ["run", $"samples/scripts/{script}", .. more]);
        Assert.True(exitCode == 0, said);
        return said;
    }
}
