using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.StaticFiles;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.FileProviders;
using Microsoft.Extensions.Logging;

namespace PlotAgronomy.OfflinePage.Tests.Support;

/// <summary>Serves the files of a folder on a free port of this machine, as any host of plain files does.</summary>
internal sealed class StaticSite : IAsyncDisposable
{
    private readonly WebApplication server;

    private StaticSite(WebApplication server) => this.server = server;

    internal string Address => server.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single();

    internal static async Task<StaticSite> StartAsync(string folder)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        builder.Logging.ClearProviders();
        var server = builder.Build();
        var types = new FileExtensionContentTypeProvider { Mappings = { [".wasm"] = "application/wasm" } };
        server.Use(GiveCompressed(folder));
        server.UseFileServer(new FileServerOptions
        {
            FileProvider = new PhysicalFileProvider(folder),
            StaticFileOptions = { ContentTypeProvider = types, ServeUnknownFileTypes = true },
        });
        await server.StartAsync();
        return new(server);
    }

    /// <summary>Hands out the file that the build has compressed, where there is one.</summary>
    private static Func<HttpContext, RequestDelegate, Task> GiveCompressed(string folder) => async (context, next) =>
    {
        string? path = context.Request.Path.Value;
        if (path is not null && File.Exists($"{folder}{path}.br") && context.Request.Headers.AcceptEncoding.ToString().Contains("br", StringComparison.Ordinal))
        {
            context.Response.Headers.ContentEncoding = "br";
            context.Response.ContentType = TypeOf(path);
            await context.Response.SendFileAsync($"{folder}{path}.br");
            return;
        }

        await next(context);
    };

    private static string TypeOf(string path) => Path.GetExtension(path) switch
    {
        ".wasm" => "application/wasm",
        ".js" => "text/javascript",
        ".css" => "text/css",
        ".html" => "text/html",
        ".svg" => "image/svg+xml",
        _ => "application/octet-stream",
    };

    internal Task StopAsync() => server.StopAsync();

    public async ValueTask DisposeAsync()
    {
        await StopAsync();
        await server.DisposeAsync();
    }
}
