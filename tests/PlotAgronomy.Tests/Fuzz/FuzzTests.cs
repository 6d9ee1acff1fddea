using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace PlotAgronomy.Tests.Fuzz;

/// <summary>Whatever text a reader is given ends in an answer or in what it documents, and soon.</summary>
/// <remarks>Some thousand texts in the gate; <c>FUZZ_INPUTS=100000</c> draws as many for each reader, <c>FUZZ_FROM</c> starts
/// elsewhere. <c>.ci/fuzz MINUTES</c> goes on for so long.</remarks>
public partial class FuzzTests
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(20);

    public static TheoryData<string> Readers => [.. FuzzedReader.All.Select(r => r.Corpus)];

    private static int Count => Variable("FUZZ_INPUTS") ?? 400;

    [Theory, MemberData(nameof(Readers))]
    public void A_text_of_the_corpus_is_read(string corpus)
    {
        var reader = FuzzedReader.All.Single(r => r.Corpus == corpus);
        Assert.All(reader.Texts, reader.Read);
    }

    [Theory, MemberData(nameof(Readers))]
    public void A_spoilt_text_is_answered_or_refused_as_documented(string corpus)
    {
        var reader = FuzzedReader.All.Single(r => r.Corpus == corpus);
        var texts = reader.Texts;
        var failures = new List<string>();
        int from = Variable("FUZZ_FROM") ?? 0;
        for (int number = from; number < from + Count && failures.Count < 10; number++)
        {
            var random = new Random(number);
            string text = TextSpoiling.Spoil(texts[random.Next(texts.Count)], texts, random);
            var clock = Stopwatch.StartNew();
            string? wrong = reader.Try(text);
            wrong ??= clock.Elapsed > Longest ? $"took {clock.Elapsed}" : null;
            if (wrong is not null)
            {
                failures.Add($"{number}: {wrong}\n{text}");
            }
        }

        Assert.True(failures.Count == 0, string.Join("\n\n", failures));
    }

    /// <summary>Every number of every text in turn, made too long for whole numbers, for decimals and for doubles.</summary>
    [Theory, MemberData(nameof(Readers))]
    public void A_number_of_endless_digits_is_answered_or_refused_as_documented(string corpus)
    {
        var reader = FuzzedReader.All.Single(r => r.Corpus == corpus);
        var failures =
            from text in reader.Texts
            from number in Digits().Matches(text)
            from length in (int[])[12, 40, 400]
            let spoilt = $"{text[..number.Index]}{new string('9', length)}{text[(number.Index + number.Length)..]}"
            let wrong = reader.Try(spoilt)
            where wrong is not null
            select $"{wrong}\n{spoilt}";
        Assert.Empty(failures.Take(3));
    }

    [GeneratedRegex("[0-9]+")]
    private static partial Regex Digits();

    private static int? Variable(string name) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture, out int count) ? count : null;
}
