using System.Reflection;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.House;

/// <summary>A line of a sum comes from a row of a formula table, and every row of such a table is a line of some sum.</summary>
public class FormulaUseTests
{
    /// <summary>The columns in which tables name the formula of a row.</summary>
    private static readonly string[] FormulaColumns = ["formula_id", "formula"];

    [Fact]
    public void A_line_of_a_sum_is_made_by_a_formula_row_alone() =>
        Assert.Equal([typeof(Formula)], HouseAssembly.Library.GetTypes().Where(t => IlReader.MethodsOf(t).Any(MakesALine)));

    [Fact]
    public void Every_formula_row_is_shown_by_code()
    {
        var shown = NamesInCode().Concat(NamesInTables()).ToHashSet(StringComparer.Ordinal);
        Assert.Empty(Ids().Where(id => !shown.Contains(id)));
    }

    [Theory]
    [InlineData("var line = SeedFormulas.All[\"bulk-rate\"].Line(answer);", true)]
    [InlineData("string id = isWide ? \"bulk-rate\" : \"other\";", true)]
    [InlineData("var sources = SeedFormulas.All.SourcesOf(\"bulk-rate\");", false)]
    [InlineData("double limit = SeedConstants.All[\"bulk-rate\"];", false)]
    [InlineData("// SeedFormulas.All[\"bulk-rate\"]", false)]
    public void Naming_a_row_for_its_source_or_a_constant_of_the_same_name_shows_nothing(string code, bool isShown) =>
        Assert.Equal(isShown, NamesIn(code).Contains("bulk-rate"));

    private static bool MakesALine(MethodBase method) =>
        IlReader.Mentions(method).Any(m => m is { Code.Name: "newobj", Member: ConstructorInfo made } && made.DeclaringType == typeof(WorkedLine) && made.GetParameters().Length > 1);

    private static IEnumerable<string> Ids() =>
        CsvTable.EmbeddedNames.Where(IsFormulas).SelectMany(n => new FormulaTable(n).All).Select(f => f.Id);

    private static IEnumerable<string> NamesInTables() =>
        from name in CsvTable.EmbeddedNames
        where !IsFormulas(name)
        let table = CsvTable.Embedded(name)
        from column in FormulaColumns.Where(table.Has)
        from row in table.Rows
        select row.TextOrNull(column);

    private static IEnumerable<string> NamesInCode() =>
        Directory.EnumerateFiles(Repository.PathOf("src"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .SelectMany(f => NamesIn(File.ReadAllText(f)));

    private static IEnumerable<string> NamesIn(string code) =>
        CSharpSyntaxTree.ParseText(code).GetRoot().DescendantNodes().OfType<LiteralExpressionSyntax>()
            .Where(l => l.IsKind(SyntaxKind.StringLiteralExpression) && !NamesSomethingElse(l))
            .Select(l => l.Token.ValueText);

    /// <summary>Whether the text is asked for its source alone, or of another table.</summary>
    private static bool NamesSomethingElse(LiteralExpressionSyntax literal) => literal.Parent?.Parent?.Parent switch
    {
        InvocationExpressionSyntax call => call.Expression is MemberAccessExpressionSyntax { Name.Identifier.Text: "SourcesOf" } || IsOfConstants(call.Expression),
        ElementAccessExpressionSyntax element => IsOfConstants(element.Expression),
        _ => false,
    };

    private static bool IsOfConstants(ExpressionSyntax owner) => owner.ToString().Contains("Constants.", StringComparison.Ordinal);

    private static bool IsFormulas(string table) => table.EndsWith("/formulas.csv", StringComparison.Ordinal);
}
