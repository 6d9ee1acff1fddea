using System.Diagnostics;
using System.Globalization;
using System.Text;
using PlotAgronomy.Records;

namespace PlotAgronomy.Tests.SampleConsole;

/// <summary>The folder of a plot book while its writers are killed, its disk is full, or eight of them write at once. Each writer
/// is a process of its own.</summary>
/// <remarks>25 kills, or as many as <c>BOOK_KILLS</c> says; their points in time are drawn by a fixed seed, or by
/// <c>BOOK_KILLS_SEED</c>. Every 50 kills the tally is added to the file <c>BOOK_KILLS_LOG</c>, so that a long run that is broken
/// off has told what it found. <c>.ci/kills</c> makes such a run.</remarks>
[Trait("Category", "Slow")]
public sealed class BookUnderKillsTests : IDisposable
{
    private const int UsualKills = 25;
    private const int KillsABook = 25;
    private const int KillsATally = 50;
    private const int LongestWait = 40;

    private readonly string folder = Directory.CreateTempSubdirectory("plot-book").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static int Kills => Number("BOOK_KILLS", UsualKills);

    private static int Number(string variable, int usual) =>
        Environment.GetEnvironmentVariable(variable) is { } text ? int.Parse(text, CultureInfo.InvariantCulture) : usual;

    private static async Task Tell(string tally)
    {
        TestContext.Current.SendDiagnosticMessage(tally);
        if (Environment.GetEnvironmentVariable("BOOK_KILLS_LOG") is { } log)
        {
            await File.AppendAllTextAsync(log, tally + "\n", TestContext.Current.CancellationToken);
        }
    }

    private string Plan()
    {
        string file = Path.Combine(folder, "plan.json");
        File.WriteAllText(file, """{ "planVersion": 1, "plot": { "name": "north", "area": "0.5 ac", "use": "browsed" } }""");
        return file;
    }

    private static Process Start(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        return Process.Start(start)!;
    }

    private static string Console => Path.Combine(AppContext.BaseDirectory, "plot-agronomy");

    private static string Rain(int hundredths) => string.Create(CultureInfo.InvariantCulture, $"rain {hundredths / 100.0} in 2026-09-20");

    /// <summary>Feeds a writer until it dies, and gives the names of the entries it said were on the disk.</summary>
    private static async Task<List<string>> WriteUntilKilled(Process writer, int first, int milliseconds)
    {
        var acknowledged = new List<string>();
        var feeding = Task.Run(async () =>
        {
            try
            {
                for (int i = first; ; i++)
                {
                    await writer.StandardInput.WriteLineAsync(Rain(1 + (i % 900)));
                    await writer.StandardInput.FlushAsync();
                }
            }
            catch (IOException)
            {
                return;
            }
        });
        var killing = Task.CompletedTask;
        while (await writer.StandardOutput.ReadLineAsync() is { } line)
        {
            if (acknowledged.Count == 0)
            {
                killing = Task.Run(async () =>
                {
                    await Task.Delay(milliseconds);
                    writer.Kill();
                });
            }

            acknowledged.Add(line.Split(' ')[0]);
        }

        await killing;
        await writer.WaitForExitAsync();
        await feeding;
        return acknowledged;
    }

    [Fact]
    public async Task Killed_at_random_points_nothing_older_is_lost_and_every_loss_is_told()
    {
        var random = new Random(Number("BOOK_KILLS_SEED", Kills));
        string plan = Plan();
        int said = 0, held = 0, torn = 0;
        for (int kill = 0; kill < Kills; kill++)
        {
            string book = Path.Combine(folder, $"book-{kill / KillsABook}");
            string file = Path.Combine(book, "owner.jsonl");
            byte[] before = File.Exists(file) ? await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken) : [];
            using var writer = Start(Console, "record", plan, "--book", book, "--entries", "-");
            var acknowledged = await WriteUntilKilled(writer, kill, random.Next(LongestWait));
            byte[] after = await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken);
            Assert.Equal(before, after[..before.Length]);
            var read = PlotBookFolder.Open(book, "owner").Read();
            var names = read.Entries.Select(e => e.Id!).ToHashSet();
            Assert.Empty(acknowledged.Where(id => id.StartsWith("owner-", StringComparison.Ordinal) && !names.Contains(id)));
            Assert.Equal(read.SetAside.Length, read.Findings.Length);
            Assert.Equal(Lines(after).Count, read.Entries.Length + read.SetAside.Length);
            said += acknowledged.Count;
            held = kill % KillsABook == KillsABook - 1 || kill == Kills - 1 ? held + read.Entries.Length : held;
            torn += after[^1] == (byte)'\n' ? 0 : 1;
            if ((kill + 1) % KillsATally == 0 || kill == Kills - 1)
            {
                await Tell($"{kill + 1} kills: {said} entries acknowledged, none lost, {torn} torn lines, all told");
            }
        }

        Assert.True(held >= said);
    }

    private static List<string> Lines(byte[] file) => [.. Encoding.UTF8.GetString(file).Split('\n', StringSplitOptions.RemoveEmptyEntries)];

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Eight_writers_at_once_lose_nothing(bool ofOneName)
    {
        const int Writers = 8, Each = 20;
        string plan = Plan();
        string book = Path.Combine(folder, "shared");
        await Task.WhenAll(Enumerable.Range(0, Writers).Select(async w =>
        {
            using var writer = Start(Console, "record", plan, "--book", book, "--writer", ofOneName ? "owner" : $"writer{w}", "--entries", "-");
            for (int i = 0; i < Each; i++)
            {
                await writer.StandardInput.WriteLineAsync(Rain(1 + (w * Each) + i));
            }

            writer.StandardInput.Close();
            await writer.StandardOutput.ReadToEndAsync();
            await writer.WaitForExitAsync();
            Assert.Equal(0, writer.ExitCode);
        }));
        var read = PlotBookFolder.Open(book, "reader").Read();
        Assert.Empty(read.Findings);
        Assert.Equal(Enumerable.Range(1, Writers * Each), read.Current.OfType<RainEntry>().Select(r => (int)Math.Round(r.Amount.Inches * 100)).Order());
    }

    /// <summary>A file system of two pages in memory stands for a disk that is full; where none may be made, a stream that fails
    /// (<c>PlotBookFolderTests</c>) holds the same.</summary>
    [Fact]
    public async Task On_a_full_disk_the_writer_says_so_and_nothing_older_is_lost()
    {
        string plan = Plan();
        string lines = Path.Combine(folder, "lines.txt");
        await File.WriteAllLinesAsync(lines, Enumerable.Range(1, 400).Select(Rain), TestContext.Current.CancellationToken);
        string disk = Directory.CreateDirectory(Path.Combine(folder, "disk")).FullName;
        string rescued = Directory.CreateDirectory(Path.Combine(folder, "rescued")).FullName;
        const string Script = "mount -t tmpfs -o size=8k tmpfs \"$1\" || exit 77; out=$2; disk=$1; shift 2; \"$@\"; code=$?; cp \"$disk\"/* \"$out\"; exit $code";
        Assert.SkipUnless(File.Exists("/usr/bin/unshare"), "no way to make a small disk");
        using var writer = Start("/usr/bin/unshare", "-Urm", "/bin/sh", "-c", Script, "sh", disk, rescued, Console, "record", plan, "--book", disk, "--entries", lines);
        var error = writer.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        string[] said = (await writer.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken)).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        await writer.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.SkipWhen(writer.ExitCode is 77 || (await error).Contains("unshare:", StringComparison.Ordinal), "a small disk may not be made here");
        Assert.Equal(1, writer.ExitCode);
        Assert.Contains("cannot go on", await error, StringComparison.Ordinal);
        Assert.NotEmpty(said);
        var read = PlotBookFolder.Open(rescued, "owner").Read();
        Assert.Empty(said.Select(l => l.Split(' ')[0]).Except(read.Entries.Select(e => e.Id!)));
        Assert.Equal(read.SetAside.Length, read.Findings.Length);
        Assert.Single(PlotBookFolder.Open(rescued, "owner").Append(new RainEntry { On = new(2026, 9, 21), Plot = "north", Amount = UnitsNet.Length.FromInches(1) }));
        Assert.Equal(read.Entries.Length + 1, PlotBookFolder.Open(rescued, "owner").Read().Entries.Length);
    }
}
