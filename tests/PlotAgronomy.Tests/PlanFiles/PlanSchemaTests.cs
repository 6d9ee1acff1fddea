using System.Text.Json;
using Json.Schema;
using PlotAgronomy.PlanFiles;
using PlotAgronomy.Tests.House;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>The schema in docs/ is the code's; an independent validator accepts what the reader accepts.</summary>
public class PlanSchemaTests
{
    [Fact]
    [Trait("Category", "Generated")]
    public void The_schema_in_docs_is_current() => GeneratedDocsTests.AssertCurrent("docs/plan.schema.json", PlanSchema.ToJson());

    [Theory]
    [InlineData("fall-blend")]
    [InlineData("frost-seeding")]
    [InlineData("clover-lots")]
    [InlineData("store-blend")]
    [InlineData("county-report")]
    [InlineData("strip-reading")]
    [InlineData("printed-rate")]
    public void The_demo_plans_satisfy_the_schema(string name) => Assert.True(IsValid(File.ReadAllText(Repository.PathOf($"samples/data/{name}.json"))));

    [Theory]
    [InlineData("\"planVersion\": 1,", "")]
    [InlineData("\"method\": \"tilled-and-packed\"", "\"method\": \"thrown\"")]
    [InlineData("\"name\": \"Fern Bottom\"", "\"name\": \"Fern Bottom\", \"colour\": \"green\"")]
    [InlineData("\"waterPh\": 5.6", "\"waterPh\": 65")]
    [InlineData("\"use\": \"browsed\"", "\"use\": \"browsed\", \"area\": \"0.6 ac\"")]
    public void What_the_reader_refuses_by_form_the_schema_refuses_too(string from, string to)
    {
        string broken = File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json")).Replace(from, to, StringComparison.Ordinal);
        Assert.NotEmpty(PlanFile.Read(broken).Problems);
        Assert.False(IsValid(broken));
    }

    internal static bool IsValid(string json)
    {
        using var document = JsonDocument.Parse(json);
        return JsonSchema.FromText(PlanSchema.ToJson()).Evaluate(document.RootElement).IsValid;
    }
}
