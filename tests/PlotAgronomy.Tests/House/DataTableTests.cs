using System.Reflection;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.House;

/// <summary>Integrity of every embedded table: these tests check the tables' form, not their truth.</summary>
public class DataTableTests
{
    private static bool IsCatalog(string name) =>
        name is "Reference/Data/sources.csv" or "Reference/Data/institutions.csv" or "Reference/Data/places.csv"
        || IsFindings(name);

    private static bool IsFindings(string name) => name.EndsWith("/findings.csv", StringComparison.Ordinal);

    private static bool IsQuestions(string name) => name.EndsWith("/questions.csv", StringComparison.Ordinal);

    private static IEnumerable<string> CodedTexts => FindingCatalog.Codes.Concat(QuestionCatalog.Codes);

    public static TheoryData<string> Tables => [.. CsvTable.EmbeddedNames];

    [Theory, MemberData(nameof(Tables))]
    public void Every_row_names_a_known_source_and_its_status(string name)
    {
        var table = CsvTable.Embedded(name);
        Assert.NotEmpty(table.Rows);
        if (name == "Reference/Data/sources.csv")
        {
            return;
        }

        foreach (var row in table.Rows)
        {
            foreach (
                string id in table
                    .Header.Where(h => h.EndsWith("source_id", StringComparison.Ordinal))
                    .Select(row.TextOrNull)
                    .OfType<string>()
                    .SelectMany(ids => ids.Split(';'))
            )
            {
                Assert.True(Source.TryFind(id, out _, out _), $"{name}, line {row.Line}: unknown source '{id}'");
            }
        }

        if (!IsCatalog(name))
        {
            Assert.True(table.Header.Any(h => h.EndsWith("source_id", StringComparison.Ordinal)), $"{name} has no source_id");
            Assert.True(table.Header.Any(h => h.EndsWith("status", StringComparison.Ordinal)), $"{name} has no status");
            foreach (var row in table.Rows)
            {
                foreach (string column in table.Header.Where(h => h.EndsWith("status", StringComparison.Ordinal)))
                {
                    Assert.True(
                        row.TextOrNull(column) is null or "read" or "secondary" or "memory" or "practice",
                        $"{name}, line {row.Line}: status '{row.TextOrNull(column)}'"
                    );
                }
            }
        }
    }

    [Theory, MemberData(nameof(Tables))]
    public void Ids_are_unique_and_a_row_that_names_a_source_says_where_and_how_well_it_is_known(string name) =>
        Table.Check(CsvTable.Embedded(name));

    [Fact]
    public void Every_coded_text_can_be_made() =>
        Assert.Equal(CodedTexts.Count(), FindingCatalog.Templates.Count() + QuestionCatalog.Templates.Count());

    [Fact]
    public void A_superseded_source_names_a_known_one() => Assert.All(Source.All, s => Assert.NotEqual(s, s.SupersededBy));

    private static readonly Lazy<List<(string Name, string Code)>> Constants = new(() =>
        [
            .. HouseAssembly
                .AllTypes.Where(t =>
                    t.Name.EndsWith("Codes", StringComparison.Ordinal) && t is { IsAbstract: true, IsSealed: true }
                )
                .SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.Public))
                .Where(f => f.IsLiteral && f.FieldType == typeof(string))
                .Select(f => ($"{f.DeclaringType!.Name}.{f.Name}", (string)f.GetRawConstantValue()!)),
        ]
    );

    private static readonly Lazy<List<(string File, string Text)>> Code = new(() =>
        [
            .. Directory
                .EnumerateFiles(Repository.PathOf("src"), "*.cs", SearchOption.AllDirectories)
                .Where(f =>
                    !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
                )
                .Select(f => (f, WithoutExamples(f))),
        ]
    );

    /// <summary>What stands in a cell of a table that is no list of findings or questions.</summary>
    private static readonly Lazy<HashSet<string>> NamedByTables = new(() =>
        CsvTable
            .EmbeddedNames.Where(n => !IsFindings(n) && !IsQuestions(n))
            .Select(CsvTable.Embedded)
            .SelectMany(table => table.Rows.SelectMany(r => table.Header.Select(r.TextOrNull)))
            .OfType<string>()
            .SelectMany(cell => cell.Split(';'))
            .ToHashSet(StringComparer.Ordinal)
    );

    /// <summary>A caution that only rows of tables name needs no constant.</summary>
    [Fact]
    public void Every_caution_and_every_question_has_one_constant_or_is_named_by_a_table()
    {
        var coded = Constants.Value.Select(c => c.Code).ToList();
        Assert.Equal(
            CodedTexts.Where(c => coded.Contains(c) || !NamedByTables.Value.Contains(c)).Order(StringComparer.Ordinal),
            coded.Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void The_code_of_a_question_says_that_it_asks() =>
        Assert.Empty(QuestionCatalog.Codes.Where(c => c.Split('-') is not [_, "ask", _, ..]));

    [Fact]
    public void A_question_asks_one_thing() =>
        Assert.Empty(QuestionCatalog.Templates.Where(t => t.Text.Template.Count(c => c == '?') != 1).Select(t => t.Code));

    [Fact]
    public void The_codes_of_a_room_begin_alike() =>
        Assert.Empty(
            from table in CsvTable.EmbeddedNames.Where(IsQuestions)
            let findings = CsvTable.Embedded(table.Replace("questions.csv", "findings.csv", StringComparison.Ordinal))
            let beginnings = findings.Rows.Select(r => r.Text("code").Split('-')[0]).ToHashSet()
            from row in CsvTable.Embedded(table).Rows
            where !beginnings.Contains(row.Text("code").Split('-')[0])
            select $"{table}: {row.Text("code")}"
        );

    [Fact]
    public void Every_caution_is_raised_and_every_question_asked_somewhere_in_the_library()
    {
        string code = string.Concat(Code.Value.Select(c => c.Text));
        Assert.Empty(Constants.Value.Where(c => !code.Contains(c.Name, StringComparison.Ordinal)));
    }

    /// <summary>An example in the documentation is a user's code: it asks by name.</summary>
    private static string WithoutExamples(string file) =>
        string.Join('\n', File.ReadLines(file).Where(line => !line.TrimStart().StartsWith("///", StringComparison.Ordinal)));

    [Fact]
    public void No_code_names_a_caution_or_a_question_by_a_literal() =>
        Assert.Empty(
            from file in Code.Value
            where !file.File.EndsWith("Codes.cs", StringComparison.Ordinal)
            from code in CodedTexts
            where file.Text.Contains($"\"{code}\"", StringComparison.Ordinal)
            select $"{Path.GetRelativePath(Repository.Root, file.File)}: {code}"
        );

    [Fact]
    public void No_code_names_a_source_by_a_literal() =>
        Assert.Empty(
            from file in Code.Value
            from source in Source.All
            where file.Text.Contains($"\"{source.Id}\"", StringComparison.Ordinal)
            select $"{Path.GetRelativePath(Repository.Root, file.File)}: {source.Id}"
        );

    /// <summary>NE is a point of the compass too.</summary>
    [Fact]
    public void No_code_names_a_recommendation_or_rating_system_by_a_literal() =>
        Assert.Empty(
            from file in Code.Value
            where !file.File.EndsWith("Bearing.cs", StringComparison.Ordinal)
            from id in RecommendationSystem
                .Everything.Select(s => s.Id)
                .Union(RatingSystem.All.Union(RatingSystem.Unchecked).Select(s => s.Id))
            where file.Text.Contains($"\"{id}\"", StringComparison.Ordinal)
            select $"{Path.GetRelativePath(Repository.Root, file.File)}: {id}"
        );

    /// <summary>The properties of institutions stand in their own file; Adams-Evans is a word of the trade for a buffer.</summary>
    [Fact]
    public void No_code_names_an_institution_by_a_literal() =>
        Assert.Empty(
            from file in Code.Value
            where !file.File.EndsWith($"{Path.DirectorySeparatorChar}Institution.cs", StringComparison.Ordinal)
            from institution in Institution.All
            from name in institution.OtherNames.Concat([institution.Id, institution.Name, institution.FullName])
            where file.Text.Contains($"\"{name}\"", StringComparison.Ordinal)
            where name != SoilWords.Buffers[SoilBuffer.AdamsEvans]
            select $"{Path.GetRelativePath(Repository.Root, file.File)}: {name}"
        );

    [Fact]
    public void No_source_names_an_address()
    {
        Assert.Empty(
            Source
                .All.Where(s =>
                    s.ToString().Contains("http", StringComparison.OrdinalIgnoreCase)
                    || s.ToString().Contains("www.", StringComparison.OrdinalIgnoreCase)
                )
                .Select(s => s.Id)
        );
    }
}
