using System.Diagnostics;
using System.Globalization;

namespace PlotAgronomy.Tests.Fuzz;

/// <summary>Whatever text a reader is given ends in an answer or in what it documents, and soon.</summary>
/// <remarks>Some thousand texts in the gate; <c>FUZZ_INPUTS=100000</c> draws as many for each reader, <c>FUZZ_FROM</c> starts
/// elsewhere. <c>.ci/fuzz MINUTES</c> goes on for so long.</remarks>
public class FuzzTests
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

    [Theory, MemberData(nameof(Readers))]
    public void A_number_of_endless_digits_is_answered_or_refused_as_documented(string corpus)
    {
        var reader = FuzzedReader.All.Single(r => r.Corpus == corpus);
        var failures =
            from text in reader.Texts
            from spoilt in TextSpoiling.WithEndlessDigits(text)
            let wrong = reader.Try(spoilt)
            where wrong is not null
            select $"{wrong}\n{spoilt}";
        Assert.Empty(failures.Take(3));
    }

    private static int? Variable(string name) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture, out int count) ? count : null;
}
