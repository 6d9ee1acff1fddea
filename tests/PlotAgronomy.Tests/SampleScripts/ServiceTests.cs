using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using PlotAgronomy.Tests.Packaging;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.SampleScripts;

/// <summary>Plans posted, sheets and problems returned, against what the library gives in this process.</summary>
/// <remarks>The shape of a problem is that of RFC 9457.</remarks>
[Collection(DotnetCommand.BuildsOfTheLibrary), Trait("Category", "Slow")]
public class ServiceTests(ServiceTests.Started service) : IClassFixture<ServiceTests.Started>
{
    private const string Script = "samples/scripts/serve.cs";

    private static readonly string Demo = File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json"));

    private static FieldSheet Sheet => FieldSheet.Of(PlanFile.Read(Demo).Plan!.Solve());

    public static TheoryData<string?, string, string> Forms => new()
    {
        { null, "text/plain", Sheet.ToText() },
        { "text/plain", "text/plain", Sheet.ToText() },
        { "text/markdown", "text/markdown", Sheet.ToMarkdown() },
        { "text/html,application/xhtml+xml,*/*;q=0.8", "text/html", Sheet.ToHtml() },
        { "text/plain;q=0.5, application/json", "application/json", Sheet.ToJson() },
    };

    [Theory, MemberData(nameof(Forms))]
    public async Task A_plan_gives_the_librarys_sheet(string? accept, string type, string expected)
    {
        using var answer = await PostAsync(Demo, accept);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(type, answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal(expected, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    [Theory, InlineData("\"182 ft\"", "\"182 fet\""), InlineData("\"germination\": \"78 %\"", "\"germintion\": \"78 %\""), InlineData("{", "")]
    public async Task A_mistake_is_told_with_its_line_and_field(string right, string wrong)
    {
        string plan = Demo.Replace(right, wrong, StringComparison.Ordinal);
        using var answer = await PostAsync(plan, null);
        var problem = await ProblemAsync(answer, HttpStatusCode.BadRequest);
        Assert.Equal(
            PlanFile.Read(plan).Problems.Select(p => (p.Line, p.Column, p.Path, p.Text)),
            problem.GetProperty("problems").EnumerateArray().Select(p => (p.GetProperty("line").GetInt32(), p.GetProperty("column").GetInt32(), p.GetProperty("field").GetString()!, p.GetProperty("text").GetString()!)));
    }

    [Fact]
    public async Task A_file_that_a_plan_names_is_not_opened()
    {
        string plan = """{ "planVersion": 1, "plot": { "name": "x", "outlineFile": "/etc/hostname", "use": "browsed" } }""";
        using var answer = await PostAsync(plan, null);
        var problem = await ProblemAsync(answer, HttpStatusCode.BadRequest);
        Assert.Equal("$.plot.outlineFile", problem.GetProperty("problems")[0].GetProperty("field").GetString());
    }

    [Theory, InlineData(true), InlineData(false)]
    public async Task A_plan_of_more_than_a_million_bytes_is_refused(bool saysItsLength)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/sheet") { Content = Json(new string(' ', 1_000_001)) };
        request.Headers.TransferEncodingChunked = !saysItsLength;
        using var answer = await service.Client.SendAsync(request, TestContext.Current.CancellationToken);
        await ProblemAsync(answer, HttpStatusCode.RequestEntityTooLarge);
    }

    [Fact]
    public async Task A_form_that_is_not_written_is_refused()
    {
        using var answer = await PostAsync(Demo, "image/png");
        await ProblemAsync(answer, HttpStatusCode.NotAcceptable);
    }

    [Fact]
    public async Task The_document_of_the_service_names_its_answers()
    {
        using var document = JsonDocument.Parse(await service.Client.GetStringAsync("/openapi/v1.json", TestContext.Current.CancellationToken));
        var post = document.RootElement.GetProperty("paths").GetProperty("/sheet").GetProperty("post");
        Assert.Equal(["200", "400", "406", "413", "504"], post.GetProperty("responses").EnumerateObject().Select(r => r.Name).Order());
        Assert.Equal(["application/json", "text/html", "text/markdown", "text/plain"], post.GetProperty("responses").GetProperty("200").GetProperty("content").EnumerateObject().Select(c => c.Name).Order());
    }

    /// <summary>The other script that serves: a folder of plain files, named from where the command is typed.</summary>
    [Fact]
    public async Task A_folder_of_files_is_opened()
    {
        string named = Path.Combine("artifacts", Path.GetRandomFileName());
        var folder = Directory.CreateDirectory(Repository.PathOf(named));
        try
        {
            await File.WriteAllTextAsync(Path.Combine(folder.FullName, "index.html"), "a page", TestContext.Current.CancellationToken);
            using var open = await RunningService.StartAsync("samples/scripts/open-page.cs", named, "http://127.0.0.1:0");
            Assert.Equal("a page", await open.Client.GetStringAsync("/", TestContext.Current.CancellationToken));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void It_is_short() => Assert.InRange(File.ReadAllLines(Repository.PathOf(Script)).Length, 1, 79);

    private Task<HttpResponseMessage> PostAsync(string plan, string? accept)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, "/sheet") { Content = Json(plan) };
        if (accept is not null)
        {
            request.Headers.Accept.ParseAdd(accept);
        }

        return service.Client.SendAsync(request);
    }

    private static StringContent Json(string text) => new(text, Encoding.UTF8, new MediaTypeHeaderValue("application/json"));

    private static async Task<JsonElement> ProblemAsync(HttpResponseMessage answer, HttpStatusCode status)
    {
        Assert.Equal(status, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType!.MediaType);
        var problem = JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement;
        Assert.Equal((int)status, problem.GetProperty("status").GetInt32());
        return problem;
    }

    /// <summary>The service, started once for all of these.</summary>
    public sealed class Started : IAsyncLifetime
    {
        private RunningService? running;

        internal HttpClient Client => running!.Client;

        public async ValueTask InitializeAsync() => running = await RunningService.StartAsync(Script, "--urls", "http://127.0.0.1:0");

        public ValueTask DisposeAsync()
        {
            running?.Dispose();
            return ValueTask.CompletedTask;
        }
    }
}
